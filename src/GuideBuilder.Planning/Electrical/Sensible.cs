namespace GuideBuilder.Planning.Electrical;

/// <summary>Inputs held against the ranges of the table (rows range-…): outside them, or of another dimension, an input counts as not known.</summary>
internal static class Sensible
{
    internal static decimal? Amps(this ElectricalFigures figures, Quantity? current) => figures.Within("current", current, "A");

    internal static decimal? Kilowatts(this ElectricalFigures figures, Quantity? power) => figures.Within("power", power, "kW");

    internal static decimal? Metres(this ElectricalFigures figures, Quantity? length) => figures.Within("length", length, "m");

    internal static decimal? SquareMillimetres(this ElectricalFigures figures, Quantity? area) => figures.Within("area", area, "mm²");

    internal static decimal? Ohms(this ElectricalFigures figures, Quantity? resistance) => figures.Within("resistance", resistance, "Ω");

    internal static decimal? MilliohmsPerMetre(this ElectricalFigures figures, Quantity? perMetre) => figures.Within("per-metre", perMetre, "mΩ/m");

    internal static decimal? Volts(this ElectricalFigures figures, Quantity? voltage) => figures.Within("voltage", voltage, "V");

    internal static decimal? Seconds(this ElectricalFigures figures, decimal? seconds) => figures.Plain("seconds", seconds);

    internal static decimal? Factor(this ElectricalFigures figures, decimal? factor) => figures.Plain("factor", factor);

    /// <summary>A plain number within the range of that name, or null.</summary>
    internal static decimal? Plain(this ElectricalFigures figures, string range, decimal? number) =>
        figures.Within(range, number is { } known ? Quantity.Number(known) : null, "");

    /// <summary>The amount in a unit if it lies within the range of that name, ends included.</summary>
    internal static decimal? Within(this ElectricalFigures figures, string range, Quantity? quantity, string unit)
    {
        var amount = quantity?.AmountIn(unit);
        return amount >= figures.In("range-" + range, "least", unit) && amount <= figures.In("range-" + range, "most", unit) ? amount : null;
    }
}
