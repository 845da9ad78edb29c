namespace GuideBuilder.Planning.Electrical;

/// <summary>The size below which a conductor would get too hot while a fault lasts. Source: BS 7671 regulation 543.1.3; k from tables 43.1 and 54.2 to 54.5.</summary>
public static class Adiabatic
{
    /// <summary>Least size in mm²: I √t / k. Current 0 to 100,000 A, time 0.001 to 5 s, k above 0. Null outside.</summary>
    public static Quantity? LeastSize(ElectricalFigures figures, Quantity current, decimal seconds, decimal k) =>
        k > 0 ? (figures.Within("fault-current", current, "A") * figures.Seconds(seconds).Root()).Over(k).Of("mm²") : null;

    /// <summary>k for a conductor (row k-…) whose insulation works at 70 or 90 °C; null where the table has none.</summary>
    public static decimal? K(ElectricalFigures figures, string row, int insulation) => figures.Number(row, Invariant($"{insulation}"));

    /// <summary>The cautious size behind a fuse whose curve is not to hand: the current that just opens it in 5 s, for 5 s.</summary>
    public static Quantity? BehindFuse(ElectricalFigures figures, Quantity greatestLoop, decimal k)
    {
        var seconds = figures.Number("disconnect-network-earth-distribution", "seconds");
        return FaultLoops.LeastVoltage(figures).Over(figures.Ohms(greatestLoop)).Of("A") is { } current && seconds is { } time ? LeastSize(figures, current, time, k) : null;
    }
}
