namespace GuideBuilder.Planning.Electrical;

/// <summary>What a sub-main from the fused switch to the fuse box is asked to do. Fuse in amps and family; design current in amps; length of route in metres; factors of surroundings; the supply's loop (null when not known); and the share of the voltage it may lose (null for row drop-sub-main-habit).</summary>
public sealed record SubMainCase(
    CableFamily Family,
    LayingMethod Method,
    Phases Phases,
    Quantity Fuse,
    string FuseFamily,
    Quantity DesignCurrent,
    Quantity Length,
    ProtectiveConductor Protective,
    EarthLoop? Supply,
    ImmutableArray<decimal?> Factors,
    Quantity? DropShare = null);

/// <summary>How one size does: its rating and the rating needed (A), drop (V) and what is left for lighting (V), loop (Ω), least protective size (mm²), the longest run that meets drop (m) and that which meets drop and loop (m; nothing or less where no length does), and a verdict on each.</summary>
public sealed record SubMainSize(
    Cable Cable,
    Quantity? Rating,
    Quantity? Needed,
    bool? Carries,
    Quantity? Drop,
    LimitVerdict DropVerdict,
    Quantity? LeftForLighting,
    EarthLoop? Loop,
    Quantity? LoopLimit,
    LimitVerdict LoopVerdict,
    Quantity? ProtectiveNeeded,
    Quantity? ProtectiveThere,
    LimitVerdict ProtectiveVerdict,
    Quantity? LongestByDrop,
    Quantity? LongestRun);

/// <summary>Chooses sizes for a sub-main. Source: BS 7671 433.1 (Ib ≤ In ≤ Iz), appendix 4, 411.4 and 543.1.3.</summary>
public static class SubMain
{
    /// <summary>How every size of the family does, smallest first.</summary>
    public static ImmutableArray<SubMainSize> Sizes(ElectricalFigures figures, SubMainCase asked) =>
        [.. Cable.Sizes(figures, asked.Family).Select(cable => Size(figures, asked, cable))];

    /// <summary>The smallest size that carries the fuse's current under the factors; null if none does or an input is out of range.</summary>
    public static SubMainSize? ByCurrent(ElectricalFigures figures, SubMainCase asked) => Sizes(figures, asked).FirstOrDefault(s => s.Carries == true);

    /// <summary>The smallest size that carries the current and is not over for drop, loop or heat. Verdicts that are not known do not rule a size out: they stay on it as questions. Null if none is left.</summary>
    public static SubMainSize? Choose(ElectricalFigures figures, SubMainCase asked) => Sizes(figures, asked).FirstOrDefault(s =>
        s.Carries == true && s.DropVerdict != LimitVerdict.Over && s.LoopVerdict != LimitVerdict.Over && s.ProtectiveVerdict != LimitVerdict.Over);

    private static SubMainSize Size(ElectricalFigures figures, SubMainCase asked, Cable cable)
    {
        var rating = cable.Rating(figures, asked.Method, asked.Phases);
        var needed = RatingFactors.NeededRating(figures, asked.Fuse, [.. asked.Factors]);
        var drop = cable.Drop(figures, asked.Phases) is { } perMetre ? VoltageDrop.Of(figures, perMetre, asked.DesignCurrent, asked.Length) : null;
        var run = FaultLoops.OfRun(figures, cable, asked.Protective, asked.Length);
        var loop = run is null ? null : asked.Supply?.Plus(figures, run);
        var limit = FaultLoops.GreatestForFuse(figures, asked.FuseFamily, asked.Fuse);
        var (least, there) = Heat(figures, asked, cable, limit);
        return new(
            cable, rating, needed,
            Carries(figures, asked, rating, needed),
            drop, Limits.AtMost(figures, drop, Allowed(figures, asked)), Left(figures, asked, drop),
            loop, limit, EarthLoop.Judge(figures, loop, limit),
            least, there, Limits.AtMost(figures, least, there),
            LongestByDrop(figures, asked, cable), Longest(figures, asked, cable, limit));
    }

    // Ib ≤ In, and In under the factors ≤ It.
    private static bool? Carries(ElectricalFigures figures, SubMainCase asked, Quantity? rating, Quantity? needed) =>
        rating is null || needed is null || figures.Amps(asked.DesignCurrent) is not { } design ? null : design <= asked.Fuse.Base && needed.Base <= rating.Base;

    /// <summary>The volts that it may lose.</summary>
    internal static Quantity? Allowed(ElectricalFigures figures, SubMainCase asked)
    {
        var share = figures.Within("share", asked.DropShare ?? figures.Quantity("drop-sub-main-habit", "share"), "%");
        return (share / 100 * figures.Volts(Power.Nominal(figures, asked.Phases))).Of("V");
    }

    private static Quantity? Left(ElectricalFigures figures, SubMainCase asked, Quantity? drop) =>
        drop is not null && VoltageDrop.Limit(figures, lighting: true, asked.Phases) is { } limit ? VoltageDrop.Left(limit, drop) : null;

    private static (Quantity? Least, Quantity? There) Heat(ElectricalFigures figures, SubMainCase asked, Cable cable, Quantity? limit)
    {
        var (there, row) = asked.Protective.Heated(figures, cable);
        var k = Adiabatic.K(figures, row, cable.Temperature);
        return (limit is not null && k is { } factor ? Adiabatic.BehindFuse(figures, limit, factor) : null, there);
    }

    private static Quantity? LongestByDrop(ElectricalFigures figures, SubMainCase asked, Cable cable) =>
        (1000 * Allowed(figures, asked)?.AmountIn("V")).Over(cable.Drop(figures, asked.Phases)?.AmountIn("mΩ/m") * figures.Amps(asked.DesignCurrent)).Of("m");

    private static Quantity? Longest(ElectricalFigures figures, SubMainCase asked, Cable cable, Quantity? limit)
    {
        var byDrop = LongestByDrop(figures, asked, cable);
        var byLoop = limit is null || asked.Supply is null ? null : FaultLoops.LongestRun(figures, cable, asked.Protective, asked.Supply.Impedance, limit);
        return byDrop is null || byLoop is null ? null : byDrop.Base <= byLoop.Base ? byDrop : byLoop;
    }
}
