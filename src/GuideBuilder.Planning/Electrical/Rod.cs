namespace GuideBuilder.Planning.Electrical;

/// <summary>A home's own earth electrode. Source: BS 7671 regulation 411.5.3 and BS 7430 (from memory).</summary>
public static class Rod
{
    /// <summary>Greatest electrode resistance in Ω for a residual current device: 50 V / IΔn. Null for no current or out of range.</summary>
    public static Quantity? GreatestResistance(ElectricalFigures figures, Quantity residualCurrent) =>
        figures.In("touch-limit", "voltage", "V").Over(figures.Amps(residualCurrent)).Of("Ω");

    /// <summary>Greatest rated residual current in amps for an electrode of that resistance: 50 V / RA.</summary>
    public static Quantity? GreatestResidualCurrent(ElectricalFigures figures, Quantity resistance) =>
        figures.In("touch-limit", "voltage", "V").Over(figures.Ohms(resistance)).Of("A");

    /// <summary>What a rod may come to in even soil, in Ω: ρ / (2πL) (ln(8L / d) − 1). ρ 1 to 20,000 Ω·m; length and diameter above nothing, the rod longer than thick. Indicative: seasons and soil change it; only a reading counts. Source: BS 7430, from memory.</summary>
    public static Quantity? Resistance(ElectricalFigures figures, decimal soil, Quantity length, Quantity diameter)
    {
        var (rho, l, d) = (figures.Plain("soil", soil), figures.Metres(length), figures.Metres(diameter));
        var shape = l > d ? (8 * l).Over(d).Log() - 1 : null;
        return (rho * shape).Over(2 * (decimal)Math.PI * l).Of("Ω");
    }
}
