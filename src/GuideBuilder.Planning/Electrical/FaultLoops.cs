namespace GuideBuilder.Planning.Electrical;

/// <summary>Loop impedances of runs, and the greatest that still open a device in time. Source: BS 7671 chapter 41 and tables 41.3 and 41.4, in rows fuse-… and breaker-….</summary>
public static class FaultLoops
{
    /// <summary>R1 + R2 of a run in Ω: live and protective conductor, warm or at 20 °C. Length 0 to 1,000 m; null outside, or where the tables lack the cable.</summary>
    public static Quantity? OfRun(ElectricalFigures figures, Cable cable, ProtectiveConductor protective, Quantity length, bool warm = true) =>
        (figures.Metres(length) * PerMetre(figures, cable, protective, warm) / 1000).Of("Ω");

    /// <summary>The greatest loop in Ω for which a fuse of that family (bs-88-3, bs-88-2, bs-1361) and rating opens within 5 s, conductors at working temperature; null where the table has none.</summary>
    public static Quantity? GreatestForFuse(ElectricalFigures figures, string family, Quantity rating) => Fuse(figures, family, rating)?.Find("loop-5-seconds");

    /// <summary>The greatest loop in Ω for a breaker of type b, c or d: U0 Cmin / (n In). Null for other types or ratings outside 0 to 3,000 A.</summary>
    public static Quantity? GreatestForBreaker(ElectricalFigures figures, string type, Quantity rating) =>
        LeastVoltage(figures).Over(figures.Number("breaker-" + type, "multiple") * figures.Amps(rating)).Of("Ω");

    /// <summary>The greatest loop in Ω for a device that needs so many amps to open in time: U0 Cmin / Ia, or without Cmin as before 2015.</summary>
    public static Quantity? GreatestForCurrent(ElectricalFigures figures, Quantity opening, bool withLeastVoltage = true) =>
        (withLeastVoltage ? LeastVoltage(figures) : Nominal(figures)).Over(figures.Amps(opening)).Of("Ω");

    /// <summary>The greatest reading for a loop measured cold: 0.8 of the tabulated. Source: trade guidance, row measured-share.</summary>
    public static Quantity? GreatestMeasured(ElectricalFigures figures, Quantity tabulated) => (figures.Share("measured-share", "share") * figures.Ohms(tabulated)).Of("Ω");

    /// <summary>The longest run in metres for which the loop still opens the device: (limit − Ze) / (R1 + R2). Nothing or less means that no length does. Null where a figure is lacking.</summary>
    public static Quantity? LongestRun(ElectricalFigures figures, Cable cable, ProtectiveConductor protective, Quantity outside, Quantity limit) =>
        ((figures.Ohms(limit) - figures.Ohms(outside)) * 1000).Over(PerMetre(figures, cable, protective, warm: true)).Of("m");

    /// <summary>Current in amps into a dead short of that loop: U0 / Z. Null for no loop at all. Source: Ohm's law.</summary>
    public static Quantity? FaultCurrent(ElectricalFigures figures, Quantity loop) => Nominal(figures).Over(figures.Ohms(loop)).Of("A");

    /// <summary>Fault current in amps at the end of a run, from the fault current at its beginning and the run's own loop, resistances added.</summary>
    public static Quantity? FaultCurrentAfter(ElectricalFigures figures, Quantity atOrigin, Quantity run)
    {
        var source = Nominal(figures).Over(figures.Within("fault-current", atOrigin, "A"));
        return source is > 0 ? Nominal(figures).Over(source + figures.Ohms(run)).Of("A") : null;
    }

    /// <summary>The table row of a fuse, or null.</summary>
    internal static TableRow? Fuse(ElectricalFigures figures, string family, Quantity rating) =>
        figures.Group("fuse-").FirstOrDefault(r => r.Words("family") == family && r.Find("rating")?.Base == rating.Base);

    internal static decimal? Nominal(ElectricalFigures figures) => figures.Volts(Power.Nominal(figures, Phases.One));

    internal static decimal? LeastVoltage(ElectricalFigures figures) => Nominal(figures) * figures.Number("least-voltage-factor", "factor");

    private static decimal? PerMetre(ElectricalFigures figures, Cable cable, ProtectiveConductor protective, bool warm)
    {
        var live = Conductors.Warmed(Conductors.Copper(figures, cable.Size), Conductors.WarmCopper(figures, warm ? cable.Temperature : 20));
        return live?.AmountIn("mΩ/m") + protective.PerMetre(figures, cable, warm)?.AmountIn("mΩ/m");
    }
}
