namespace GuideBuilder.Planning.Electrical;

/// <summary>Between power and current.</summary>
public static class Power
{
    /// <summary>Current in amps drawn by a resistive load of a power from 0 to 1,000 kW: P / U, or P / (√3 U) on three phases, at the nominal voltage or at a given one. Null outside the ranges. Source: Ohm's law; nominal voltages of BS 7671.</summary>
    public static Quantity? Current(ElectricalFigures figures, Quantity power, Phases phases = Phases.One, Quantity? voltage = null)
    {
        var volts = figures.Volts(voltage ?? Nominal(figures, phases));
        return (1000 * figures.Kilowatts(power)).Over(volts * Factor(phases)).Of("A");
    }

    /// <summary>Apparent power in kVA of a current: U I, or √3 U I on three phases. Null outside the ranges.</summary>
    public static Quantity? Apparent(ElectricalFigures figures, Quantity current, Phases phases = Phases.One) =>
        (figures.Amps(current) * figures.Volts(Nominal(figures, phases)) * Factor(phases) / 1000).Of("kVA");

    /// <summary>The nominal voltage: to neutral for a single phase, between lines for three.</summary>
    internal static Quantity? Nominal(ElectricalFigures figures, Phases phases) => figures.Quantity("nominal-voltage", phases.Cell());

    /// <summary>One for a single phase, √3 for three.</summary>
    internal static decimal? Factor(Phases phases) => phases == Phases.Three ? ((decimal?)3).Root() : 1;
}
