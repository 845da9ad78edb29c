namespace GuideBuilder.Planning.Electrical;

/// <summary>An earth-fault loop: a closed set, so that a declared maximum can never be taken for what was measured.</summary>
public abstract record EarthLoop
{
    private EarthLoop(Quantity impedance) => Impedance = impedance;

    /// <summary>The loop's impedance in Ω.</summary>
    public Quantity Impedance { get; }

    /// <summary>Measured in this home, or worked out from what was.</summary>
    public sealed record Measured : EarthLoop
    {
        /// <summary>A measured loop, in Ω.</summary>
        public Measured(Quantity impedance)
            : base(impedance)
        {
        }
    }

    /// <summary>The greatest value that an operator declares, or worked out from that.</summary>
    public sealed record DeclaredMaximum : EarthLoop
    {
        /// <summary>A declared loop, in Ω.</summary>
        public DeclaredMaximum(Quantity impedance)
            : base(impedance)
        {
        }
    }

    /// <summary>This loop lengthened by so many Ω, of the same kind; null outside 0 to 10,000 Ω. Zs = Ze + R1 + R2.</summary>
    public EarthLoop? Plus(ElectricalFigures figures, Quantity more) => (figures.Ohms(Impedance) + figures.Ohms(more)).Of("Ω") switch
    {
        null => null,
        { } sum when this is Measured => new Measured(sum),
        { } sum => new DeclaredMaximum(sum),
    };

    /// <summary>Verdict against a greatest loop. A declared maximum that is over is over; one that is not proves nothing, and is not known. An unknown loop (null) is not known.</summary>
    public static LimitVerdict Judge(ElectricalFigures figures, EarthLoop? loop, Quantity? limit) =>
        Limits.AtMost(figures, figures.Ohms(loop?.Impedance).Of("Ω"), limit) switch
        {
            LimitVerdict.Over => LimitVerdict.Over,
            var verdict when loop is Measured => verdict,
            _ => LimitVerdict.NotKnown,
        };
}
