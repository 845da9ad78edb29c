namespace GuideBuilder.Planning.Electrical;

/// <summary>What a network must keep to, and up to what it is told of a source only afterwards. Source: ESQCR 2002 regulation 27 and its like in Northern Ireland, from memory; Engineering Recommendations G98 and G99.</summary>
public static class Declared
{
    /// <summary>The lowest and highest voltage in volts that the network may give, by row supply-limits: U0 less and plus its shares. Null without the row.</summary>
    public static (Quantity Least, Quantity Most)? Voltage(ElectricalFigures figures) =>
        Between(FaultLoops.Nominal(figures), figures.Share("supply-limits", "below"), figures.Share("supply-limits", "above"), "V");

    /// <summary>The lowest and highest frequency in cycles a second, a plain number.</summary>
    public static (Quantity Least, Quantity Most)? Frequency(ElectricalFigures figures) =>
        Between(figures.Number("supply-frequency", "cycles"), figures.Share("supply-frequency", "either-way"), figures.Share("supply-frequency", "either-way"), "");

    /// <summary>The largest source on one phase, in kVA, that a type-tested set may have to be told of after it is connected; a larger one needs approval first (row generation-told-afterwards).</summary>
    public static Quantity? LargestToldAfterwards(ElectricalFigures figures) =>
        figures.Quantity("generation-told-afterwards", "current") is { } current ? Power.Apparent(figures, current) : null;

    /// <summary>Whether a source of that power on one phase (0 to 1,000 kW) needs approval first; null outside.</summary>
    public static bool? NeedsApproval(ElectricalFigures figures, Quantity power) =>
        figures.Kilowatts(power) is { } kilowatts && LargestToldAfterwards(figures) is { } most ? kilowatts > most.Amount : null;

    private static (Quantity Least, Quantity Most)? Between(decimal? nominal, decimal? below, decimal? above, string unit) =>
        (nominal * (1 - below)).Of(unit) is { } least && (nominal * (1 + above)).Of(unit) is { } most ? (least, most) : null;
}
