using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Wording;
using GuideBuilder.Tests.Rendering;
using static System.FormattableString;
using Clock = GuideBuilder.Planning.Steps.Hours;

namespace GuideBuilder.Tests.Hostile;

/// <summary>The same figure in every file of a handbook that gives it: cover, day page, calendar and costs for spreadsheets against the plan as data.</summary>
internal sealed partial class BookFigures(BoundBook book, Plan plan)
{
    private readonly JsonElement _data = JsonDocument.Parse(book.File("plan.json")).RootElement;

    /// <summary>What does not agree, a line each.</summary>
    public static IEnumerable<string> Wrong(BoundBook book, Plan plan)
    {
        var figures = new BookFigures(book, plan);
        return [.. figures.Cover(), .. figures.Day(), .. figures.Dark(), .. figures.Calendar(), .. figures.Spreadsheet()];
    }

    // Rounded outward to two figures; the dates are those of the data.
    private IEnumerable<string> Cover()
    {
        if (plan.IsBeyond)
        {
            return [];
        }

        var (cost, finish, words) = (_data.GetProperty("cost"), _data.GetProperty("finish"), Text("index.html"));
        var (low, high) = (cost.GetProperty("low").GetDecimal(), cost.GetProperty("high").GetDecimal());
        var sums = low == high ? [low] : new[] { Math.Floor(low / Unit(low)) * Unit(low), Math.Ceiling(high / Unit(high)) * Unit(high) };
        var days = new HtmlParser().ParseDocument(book.File("index.html")).QuerySelectorAll("time").Select(t => t.GetAttribute("datetime")).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. sums.Where(s => !words.Contains(plan.Money.Currency.Symbol + s.ToString("#,0.##", CultureInfo.InvariantCulture), StringComparison.Ordinal)).Select(s => Invariant($"the cover does not say {s} of {low} to {high}")),
            .. new[] { "early", "late" }.Select(n => finish.GetProperty(n).GetString()).Where(d => !days.Contains(d)).Select(d => $"the cover does not say {d}"),
        ];
    }

    private IEnumerable<string> Day() =>
        from meeting in _data.GetProperty("meetings").EnumerateArray()
        from turn in meeting.GetProperty("turns").EnumerateArray()
        let said = $"from {Hours(turn, "starts")} to {Hours(turn, "ends")}"
        where !Text("the-day.html").Contains(said, StringComparison.Ordinal)
        select $"the-day.html does not say {said} of {turn.GetProperty("step")}";

    // Of each meeting from the first turn with supply off to the end of the last, and of such steps outside meetings.
    private IEnumerable<string> Dark()
    {
        var likely = _data.GetProperty("off-supply-hours").GetProperty("likely").GetDecimal();
        var windows = _data.GetProperty("meetings").EnumerateArray().Select(m => m.GetProperty("turns").EnumerateArray().Where(t => t.GetProperty("supply-off").GetBoolean()).ToList()).Where(m => m.Count > 0)
            .Sum(m => m.Max(t => t.GetProperty("ends").GetDecimal()) - m.Min(t => t.GetProperty("starts").GetDecimal()));
        var alone = plan.Steps.Where(s => s is { Dates: not null, Step.Item: { Meeting: null, SupplyOff: true } }).Sum(s => Clock.Of(s.Step.Item).Likely);
        return plan.IsBeyond || plan.Steps.Any(s => s.Dates is { Done: true }) || windows + alone == likely ? [] : [Invariant($"{windows} hours of meetings and {alone} besides are not {likely}")];
    }

    private IEnumerable<string> Calendar()
    {
        var wanted = _data.GetProperty("meetings").EnumerateArray().Select(m => (Id: m.GetProperty("meeting").GetString()!, Day: m.GetProperty("day").GetString()!))
            .Concat(_data.GetProperty("steps").EnumerateArray().Where(s => s.TryGetProperty("book-by", out _)).Select(s => (Id: s.GetProperty("id").GetString()!, Day: Later(s.GetProperty("book-by").GetString()!))))
            .ToDictionary(x => x.Id, x => x.Day, StringComparer.Ordinal);
        return book.Files.All(f => f.Name != "dates.ics") ? [] :
            from happening in book.File("dates.ics").Replace("\r\n ", "", StringComparison.Ordinal).Split("BEGIN:VEVENT").Skip(1)
            let id = Uid().Match(happening).Groups[1].Value
            let day = Start().Match(happening).Groups[1].Value
            where wanted.GetValueOrDefault(id)?.Replace("-", "", StringComparison.Ordinal) != day
            select $"dates.ics has {id} on {day}, and plan.json on {wanted.GetValueOrDefault(id)}";
    }

    private IEnumerable<string> Spreadsheet()
    {
        var rows = book.File("costs.csv").Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(r => r.Split("\",\"")[4..7]).ToList();
        var lines = _data.GetProperty("costs").EnumerateArray().Where(c => c.GetProperty("state").GetString() != "ruled-out").Select(c => c.GetProperty("gross")).ToList();
        return rows.Count != lines.Count
            ? [Invariant($"costs.csv has {rows.Count} lines and plan.json {lines.Count}")]
            : rows.Zip(lines).Where(p => !p.First.SequenceEqual(new[] { "low", "likely", "high" }.Select(n => Invariant($"{p.Second.GetProperty(n).GetDecimal():0.00}")))).Select(p => $"costs.csv says {string.Join(", ", p.First)} of {p.Second}");
    }

    private string Later(string day) => string.CompareOrdinal(day, _data.GetProperty("today").GetString()) < 0 ? _data.GetProperty("today").GetString()! : day;

    private string Text(string page) => new HtmlParser().ParseDocument(book.File(page)).Body!.TextContent;

    private static string Hours(JsonElement turn, string end) => Figures.Hours(turn.GetProperty(end).GetDecimal());

    private static decimal Unit(decimal sum) => sum < 10 ? 1 : (decimal)Math.Pow(10, Math.Floor(Math.Log10((double)sum)) - 1);

    [GeneratedRegex(@"UID:random-home-(.*)@")]
    private static partial Regex Uid();

    [GeneratedRegex(@"DTSTART;VALUE=DATE:(\d+)")]
    private static partial Regex Start();
}
