using System.Text;
using System.Text.Json;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using Json.Schema;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>The files for other programs keep what they promise.</summary>
public sealed class DataTests(Handbooks handbooks)
{
    private static readonly Lock Turn = new();

    private static JsonSchema? _schema;

    public static TheoryData<string> Homes => [.. Handbooks.Homes];

    [Theory]
    [MemberData(nameof(Homes))]
    public void The_plan_is_as_its_schema_says(string home)
    {
        using var plan = JsonDocument.Parse(File.ReadAllText(Path.Combine(handbooks.Of(home), "plan.json")));

        Findings.AreNone(Against(Path.Combine(handbooks.Of(home), "plan-schema.json"), plan));
    }

    [Theory]
    [MemberData(nameof(Homes))]
    public void No_cell_of_the_costs_can_be_taken_for_a_formula(string home)
    {
        var text = Encoding.UTF8.GetString(File.ReadAllBytes(Path.Combine(handbooks.Of(home), "costs.csv"))).TrimStart('\uFEFF');

        Findings.AreNone(text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).SelectMany(row => row[1..^1].Split("\",\""))
            .Where(cell => cell.Length > 0 && "=+-@\t".Contains(cell[0], StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Homes))]
    public void The_last_chapters_lead_to_every_file_that_is_no_page(string home)
    {
        var linked = handbooks.Parsed(home, "how-this-was-worked-out.html").QuerySelectorAll("main a").Select(a => a.GetAttribute("href")).ToHashSet(StringComparer.Ordinal);

        Findings.AreNone(new[] { "paper.html", "large-print.html", "short-edition.html", "costs.csv", "plan.json", "plan-schema.json", "dates.ics" }.Where(f => !linked.Contains(f)));
    }

    /// <summary>What a plan does not keep of its schema, which is the same beside every plan.</summary>
    internal static IEnumerable<string> Against(string schema, JsonDocument plan)
    {
        var result = Schema(schema).Evaluate(plan.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        return result.IsValid ? [] : (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"));
    }

    // A schema of one name can be read once only.
    private static JsonSchema Schema(string file)
    {
        lock (Turn)
        {
            return _schema ??= JsonSchema.FromText(File.ReadAllText(file));
        }
    }
}
