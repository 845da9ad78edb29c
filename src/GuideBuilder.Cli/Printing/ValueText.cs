using NodaTime.Text;

namespace GuideBuilder.Cli.Printing;

/// <summary>Values and dates as the console shows them.</summary>
internal static class ValueText
{
    /// <summary>A value as it would be written in an answers file.</summary>
    internal static string Of(Value value) => value switch
    {
        Value.Option option => option.Id,
        Value.Several several => several.Ids.Length == 0 ? "none" : string.Join(", ", several.Ids),
        Value.Amount amount => amount.Quantity + Vat(amount.Vat),
        Value.Spread spread => $"{spread.Lowest} to {spread.Highest}",
        Value.Day day => Of(day.Date),
        Value.Days days => string.Join(", ", days.Spans.Select(s => s.Start == s.End ? Of(s.Start) : $"{Of(s.Start)} to {Of(s.End)}")),
        Value.Words words => words.Text.ReplaceLineEndings(" "),
        Value.NumberName name => name.Text,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A date as year-month-day.</summary>
    internal static string Of(LocalDate date) => LocalDatePattern.Iso.Format(date);

    private static string Vat(VatBasis basis) => basis switch
    {
        VatBasis.Including => " inc VAT",
        VatBasis.Excluding => " ex VAT",
        _ => "",
    };
}
