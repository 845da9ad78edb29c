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
    bool Added)
{
    /// <summary>What the quantity is counted in; null where it has no unit, or is one.</summary>
    public Unit? CountedIn { get; init; }

    /// <summary>Whether nobody knows yet who pays it, so that it may be nil.</summary>
    public bool MayBeNil => Cost is { State: ItemState.Open, Item.NilWhileOpen: true } && !Added;
}

/// <summary>A payment of the base plan: the line, its day, its likely sum with VAT, all that has been paid by then, and how much of that is paid for work that has not begun, so that some or all of it may come back if the household stops there.</summary>
public sealed record Payment(PlannedCost Line, LocalDate Day, decimal Sum, decimal SoFar, decimal MayComeBack);

/// <summary>The sums, with VAT, that five and nine in ten trials have not passed by the end of that day.</summary>
public sealed record PaidBy(LocalDate Day, decimal Middle, decimal High);

/// <summary>The money of the chosen way, gross, and the VAT in it: what one, five and nine in ten trials do not exceed.</summary>
public sealed record MoneySummary(Unit Currency, ThreePoint Gross, ThreePoint Vat)
{
    /// <summary>The sum of the added lines at their likely values, to the penny: the base column, in which every unknown answer is the one that means more work.</summary>
    public decimal Base { get; init; }

    /// <summary>The VAT in the base column.</summary>
    public decimal BaseVat { get; init; }
}
