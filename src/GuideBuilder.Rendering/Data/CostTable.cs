using System.Text;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Data;

/// <summary>Writes the costs as a table for spreadsheets (RFC 4180, UTF-8 with a mark, so that every program reads the pound sign). No cell can be taken for a formula.</summary>
internal static class CostTable
{
    private static readonly ImmutableArray<string> Heads = ["column-line", "column-invoiced-by", "column-state", "column-due", "low", "likely", "high", "column-vat"];

    /// <summary>A row a cost line that is in the plan; money is gross, in the nation's currency.</summary>
    internal static byte[] Write(Bindery bindery)
    {
        var rows = bindery.Plan.Costs.Where(c => c.Cost.IsPresent).Select(c => Row(bindery, c)).Prepend([.. Heads.Select(h => bindery.Say(h))]);
        var text = string.Concat(rows.Select(r => string.Join(',', r.Select(Cell)) + "\r\n"));
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)];
    }

    /// <summary>A cell in quotes; what a spreadsheet would take for a formula gets an apostrophe before it.</summary>
    internal static string Cell(string words)
    {
        var calm = words.Length > 0 && (words[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20') ? "'" + words : words;
        return "\"" + calm.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
    }

    private static IEnumerable<string> Row(Bindery bindery, PlannedCost cost) =>
    [
        cost.Cost.Item.Title.Words,
        bindery.Items.Find(cost.Cost.Item.InvoicedBy)?.Title.Words ?? cost.Cost.Item.InvoicedBy,
        bindery.Say($"state-{Blocks.Marks.NameOf(cost.Cost.State)}"),
        cost.Due is { } day && cost.Added ? bindery.Plan.Occasion.Edition == EditionKind.Public ? bindery.Dates.Short(day) : NodaTime.Text.LocalDatePattern.Iso.Format(day) : "",
        Sum(cost.Gross.Low),
        Sum(cost.Gross.Likely),
        Sum(cost.Gross.High),
        Figures.Percent(cost.VatShare),
    ];

    private static string Sum(decimal sum) => Invariant($"{sum:0.00}");
}
