namespace GuideBuilder.Planning.Electrical;

/// <summary>What happens on metal earthed to a combined neutral when that neutral breaks, for one resistive single-phase load. Source: circuit analysis; BS 7671 section 722 for the 70 V.</summary>
public static class OpenNeutral
{
    /// <summary>Greatest resistance in Ω of an added electrode that keeps the touch voltage at the limit of row open-neutral-touch: Ut U0 / (I (U0 − Ut)). Null for no load or out of range.</summary>
    public static Quantity? GreatestElectrode(ElectricalFigures figures, Quantity load)
    {
        var (u, limit) = (FaultLoops.Nominal(figures), figures.In("open-neutral-touch", "voltage", "V"));
        return (limit * u).Over(figures.Amps(load) * (u - limit)).Of("Ω");
    }

    /// <summary>Touch voltage in volts on that metal with an electrode of a resistance: U0 RA / (RA + U0 / I).</summary>
    public static Quantity? TouchVoltage(ElectricalFigures figures, Quantity electrode, Quantity load)
    {
        var (u, resistance) = (FaultLoops.Nominal(figures), figures.Ohms(electrode));
        return (u * resistance).Over(resistance + u.Over(figures.Amps(load))).Of("V");
    }
}
