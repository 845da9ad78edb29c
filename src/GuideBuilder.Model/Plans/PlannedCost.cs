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

/// <summary>The money of the chosen way: lowest, likely and highest sum of the added lines, gross, with the VAT in each.</summary>
public sealed record MoneySummary(Unit Currency, ThreePoint Gross, ThreePoint Vat);
