using System.Text.Json;

namespace GuideBuilder.Rendering.Data;

/// <summary>What the plan of an earlier binding said: its day, the guidance, the way, likely cost and finish (null where not told), known answers, how many happenings, the state of each item, and the steps that were done.</summary>
public sealed record EarlierPlan(
    string Handbook,
    LocalDate Today,
    LocalDate Guidance,
    string Way,
    decimal? Cost,
    LocalDate? Finish,
    FrozenDictionary<string, string> Answers,
    int Happenings,
    FrozenDictionary<string, string> States,
    FrozenSet<string> Done)
{
    private static readonly ImmutableArray<string> Lists = ["ways", "parties", "steps", "costs", "hazards", "consents", "clocks"];

    /// <summary>The plan in a file that this program wrote; anything else is a fault, never an exception.</summary>
    public static Staged<EarlierPlan> Read(SourceText file)
    {
        try
        {
            using var json = JsonDocument.Parse(file.Bytes);
            return json.RootElement.GetProperty("format").GetInt32() == PlanData.Format
                ? Staged<EarlierPlan>.From(Of(json.RootElement), [])
                : Refuse(file);
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or NodaTime.Text.UnparsableValueException)
        {
            return Refuse(file);
        }
    }

    private static Staged<EarlierPlan> Refuse(SourceText file) => Staged<EarlierPlan>.From(null, [RenderingFaults.NotAnEarlierPlan(new Place(file.Path, 1, 1))]);

    private static EarlierPlan Of(JsonElement plan) => new(
        Words(plan.GetProperty("handbook")),
        Day(plan.GetProperty("today")),
        Day(plan.GetProperty("guidance")),
        Words(plan.GetProperty("way")),
        plan.TryGetProperty("cost", out var cost) ? cost.GetProperty("likely").GetDecimal() : null,
        plan.TryGetProperty("finish", out var finish) ? Day(finish.GetProperty("likely")) : null,
        plan.GetProperty("answers").EnumerateObject().ToFrozenDictionary(a => a.Name, a => Words(a.Value), StringComparer.Ordinal),
        plan.GetProperty("log").GetArrayLength(),
        Lists.SelectMany(l => plan.GetProperty(l).EnumerateArray()).DistinctBy(Id, StringComparer.Ordinal).ToFrozenDictionary(Id, i => Words(i.GetProperty("state")), StringComparer.Ordinal),
        plan.GetProperty("steps").EnumerateArray().Where(s => s.TryGetProperty("done", out var done) && done.GetBoolean()).Select(Id).ToFrozenSet(StringComparer.Ordinal));

    private static string Id(JsonElement item) => Words(item.GetProperty("id"));

    private static string Words(JsonElement words) => words.GetString() ?? throw new FormatException("null stands where words should");

    private static LocalDate Day(JsonElement day) => NodaTime.Text.LocalDatePattern.Iso.Parse(Words(day)).GetValueOrThrow();
}
