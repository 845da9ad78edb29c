namespace GuideBuilder.Planning.Electrical;

/// <summary>Voltage lost along a cable. Source: BS 7671 appendix 4, section 6.</summary>
public static class VoltageDrop
{
    /// <summary>Volts lost: mV/A/m (written mΩ/m, 0 to 100) times amps (0 to 3,000) times metres of route (0 to 1,000). Null outside the ranges.</summary>
    public static Quantity? Of(ElectricalFigures figures, Quantity perAmpAndMetre, Quantity current, Quantity length) =>
        (figures.MilliohmsPerMetre(perAmpAndMetre) * figures.Amps(current) * figures.Metres(length) / 1000).Of("V");

    /// <summary>A drop in hundredths of the nominal voltage (to neutral, or between lines for three phases).</summary>
    public static Quantity? Share(ElectricalFigures figures, Quantity drop, Phases phases) =>
        (drop.AmountIn("V") * 100).Over(figures.Volts(Power.Nominal(figures, phases))).Of("%");

    /// <summary>The most volts that may be lost from the origin to the load: for lighting or for other uses, on a public or a private supply, with the addition for runs beyond 100 m. Null outside the ranges.</summary>
    public static Quantity? Limit(ElectricalFigures figures, bool lighting, Phases phases, bool privateSupply = false, Quantity? length = null)
    {
        var share = figures.Share("drop-limit-" + (lighting ? "lighting" : "other") + (privateSupply ? "-private" : ""), "share");
        return ((share + ForLength(figures, length)) * figures.Volts(Power.Nominal(figures, phases))).Of("V");
    }

    /// <summary>Volts left for the final circuits once the tails and sub-main have had theirs; may be less than nothing.</summary>
    public static Quantity? Left(Quantity limit, Quantity drop) => (limit.AmountIn("V") - drop.AmountIn("V")).Of("V");

    /// <summary>What a load below the rating takes off the drop, as a factor: [z + tp − (1 − (Ib/It)²)(tp − 30)] / (z + tp), without grouping or warm air. tp is 70 or 90 °C; null if Ib is over It or either is out of range. Source: BS 7671 appendix 4, 6.1, from memory.</summary>
    public static decimal? CoolerFactor(ElectricalFigures figures, Quantity current, Quantity rating, int conductor)
    {
        var (zero, ambient) = (figures.Number("drop-temperature", "zero"), figures.Number("drop-temperature", "ambient"));
        var ratio = figures.Amps(current).Over(figures.Amps(rating));
        return ratio <= 1 ? (zero + conductor - ((1 - (ratio * ratio)) * (conductor - ambient))).Over(zero + conductor) : null;
    }

    /// <summary>What the table should print for a copper conductor: twice (for three phases √3 times) its resistance, warmed. In mΩ/m. Source: DC resistance of IEC 60228.</summary>
    public static Quantity? Expected(ElectricalFigures figures, Quantity size, Phases phases, int conductor) =>
        ((phases == Phases.Three ? Power.Factor(phases) : 2) * Conductors.Copper(figures, size)?.AmountIn("mΩ/m") * figures.Number(Invariant($"drop-warm-{conductor}"), "factor")).Of("mΩ/m");

    private static decimal? ForLength(ElectricalFigures figures, Quantity? length)
    {
        if (length is null)
        {
            return 0;
        }

        var beyond = figures.Metres(length) - figures.In("drop-long-run", "beyond", "m");
        var share = beyond * figures.Share("drop-long-run", "share-per-metre");
        return share is null ? null : share <= 0 ? 0 : Math.Min(share.Value, figures.Share("drop-long-run", "most") ?? 0);
    }
}
