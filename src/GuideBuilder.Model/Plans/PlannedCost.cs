namespace GuideBuilder.Model;

/// <summary>A cost line: three points net and gross in the nation's currency, VAT rate as a share, how many, whether a quotation replaced the estimate, and when it falls due. Open lines outside the assumed world are listed and not added.</summary>
public sealed record PlannedCost(
    Planned<Cost> Cost,
    Price Price,
    decimal Quantity,
    ThreePoint Net,
    decimal VatShare,
    ThreePoint Gross,
    Paper? Quotation,
    LocalDate? Due,
    bool Added);

/// <summary>The money of the chosen way, gross, and the VAT in it: what one, five and nine in ten trials do not exceed.</summary>
public sealed record MoneySummary(Unit Currency, ThreePoint Gross, ThreePoint Vat)
{
    /// <summary>The sum of the added lines at their likely values, to the penny: the base column, in which every unknown answer is the one that means more work.</summary>
    public decimal Base { get; init; }

    /// <summary>The VAT in the base column.</summary>
    public decimal BaseVat { get; init; }
}
