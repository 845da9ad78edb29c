namespace GuideBuilder.Planning.Electrical;

/// <summary>What the surroundings do to the current that a cable carries. Source: BS 7671 appendix 4 and table 52.2, in rows air-…, earth-…, soil-…, insulation-… and grouping-….</summary>
public static class RatingFactors
{
    /// <summary>Factor for air of that many °C (−20 to 90) round conductors that work at 70 or 90 °C. Between rows the warmer one counts; null above the warmest.</summary>
    public static decimal? Air(ElectricalFigures figures, int conductor, decimal degrees) =>
        NotBelow(figures, Invariant($"air-{conductor}-"), "degrees", figures.Plain("temperature", degrees));

    /// <summary>Factor for ground of that many °C. As for air.</summary>
    public static decimal? Ground(ElectricalFigures figures, int conductor, decimal degrees) =>
        NotBelow(figures, Invariant($"earth-{conductor}-"), "degrees", figures.Plain("temperature", degrees));

    /// <summary>Factor for soil of that resistivity to heat in K·m/W, for a cable laid bare in it or in a duct. Between rows the drier one counts; null above the driest.</summary>
    public static decimal? Soil(ElectricalFigures figures, bool inDuct, decimal resistivity) =>
        NotBelow(figures, inDuct ? "soil-duct-" : "soil-buried-", "resistivity", resistivity > 0 ? resistivity : null);

    /// <summary>Factor for a length wholly within thermal insulation. Between rows the longer one counts.</summary>
    public static decimal? Insulation(ElectricalFigures figures, Quantity length) =>
        figures.Within("thickness", length, "mm") is { } mm ? figures.Group("insulation-").FirstOrDefault(r => r.In("length", "mm") >= mm).In("factor", "") : null;

    /// <summary>Factor for that many circuits bunched together, this one counted; null beyond the table.</summary>
    public static decimal? Grouping(ElectricalFigures figures, int circuits) =>
        NotBelow(figures, "grouping-", "circuits", figures.Plain("circuits", circuits));

    /// <summary>The tabulated current that a cable must have for a device of that rating under those factors: In over their product. Null if a factor is not known or out of range. Source: BS 7671 appendix 4, section 5.</summary>
    public static Quantity? NeededRating(ElectricalFigures figures, Quantity device, params decimal?[] factors) =>
        figures.Amps(device).Over(factors.Aggregate((decimal?)1m, (product, f) => product * figures.Factor(f))).Of("A");

    private static decimal? NotBelow(ElectricalFigures figures, string rows, string cell, decimal? value) =>
        value is null ? null : figures.Group(rows).FirstOrDefault(r => r.In(cell, "") >= value).In("factor", "");
}
