using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>What the answers say of a home's supply, each null or NotKnown while nobody has said.</summary>
internal sealed record HomeSupply(
    Quantity? Fuse,
    Phases? Phases,
    EarthingSystem Before,
    EarthingSystem After,
    Quantity? Reading,
    Quantity? TailsLength,
    Quantity? TailsLimit,
    bool? Looped)
{
    public const string FuseQuestion = "intake.fuse-rating";
    public const string PhasesQuestion = "intake.phases";
    public const string BeforeQuestion = "intake.earthing";
    public const string AfterQuestion = "operator.earth-offered";
    public const string ReadingQuestion = "intake.earth-reading";
    public const string LengthQuestion = "place.tails-length";
    public const string LimitQuestion = "operator.tails-limit";
    public const string LoopedQuestion = "intake.looped";

    /// <summary>Reads the supply off the answers.</summary>
    public static HomeSupply Of(Inputs inputs) => new(
        inputs.Quantity(FuseQuestion),
        inputs.Option(PhasesQuestion) switch
        {
            null => null,
            "three" => Electrical.Phases.Three,
            _ => Electrical.Phases.One,
        },
        System(inputs.Option(BeforeQuestion)),
        System(inputs.Option(AfterQuestion)),
        inputs.Quantity(ReadingQuestion),
        inputs.Quantity(LengthQuestion),
        inputs.Quantity(LimitQuestion),
        inputs.Option(LoopedQuestion) is { } looped ? looped == "yes" : null);

    /// <summary>A reading counts only where the earthing is known and stays what it was; a change makes it a thing of the past.</summary>
    public bool ReadingStands => Before != EarthingSystem.NotKnown && Before == After && Reading is not null;

    /// <summary>The supply's loop: measured where the reading stands, else what operators declare for the earth to come; null for a rod or an earth not known.</summary>
    public EarthLoop? Loop(ElectricalFigures figures) => After switch
    {
        EarthingSystem.Combined or EarthingSystem.Separate when ReadingStands => figures.Ohms(Reading).Of("Ω") is { } ohms ? new EarthLoop.Measured(ohms) : null,
        EarthingSystem.Combined or EarthingSystem.Separate => figures.Quantity(DeclaredRow!, "loop") is { } declared ? new EarthLoop.DeclaredMaximum(declared) : null,
        _ => null,
    };

    /// <summary>The table row of that declared loop, or null.</summary>
    public string? DeclaredRow => After switch
    {
        EarthingSystem.Combined => "declared-combined-1991",
        EarthingSystem.Separate => "declared-separate-1991",
        _ => null,
    };

    private static EarthingSystem System(string? option) => option switch
    {
        "combined" => EarthingSystem.Combined,
        "cable-sheath" => EarthingSystem.Separate,
        "own-rod" => EarthingSystem.OwnRod,
        _ => EarthingSystem.NotKnown,
    };
}
