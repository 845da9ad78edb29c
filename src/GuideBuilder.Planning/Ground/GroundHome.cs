using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Ground;

/// <summary>The hole and the trench of a home, as its answers give them; null stands for what is not known or out of range. A home without a joint outside has a hole of nothing, one that opens no ground a trench of nothing. The whole of both counts, whoever digs.</summary>
internal sealed class GroundHome(GroundFigures figures, Inputs inputs)
{
    public const string HasHole = "joint-outside";
    public const string HasTrench = "breaks-ground";
    public const string HoleLengthQuestion = "operator.hole-size";
    public const string HoleWidthQuestion = "operator.hole-width";
    public const string HoleDepthQuestion = "operator.hole-depth";
    public const string TrenchLengthQuestion = "ground.length";
    public const string TrenchDepthQuestion = "ground.depth-given";
    public const string DuctQuestion = "operator.duct-bore";
    public const string SoilQuestion = "ground.soil";
    public const string SurfaceQuestion = "ground.surface";
    public const string WetQuestion = "ground.wet";
    public const string TreesQuestion = "ground.trees";
    public const string GirthQuestion = "ground.tree-girth";
    public const string RoomQuestion = "ground.footing-distance";
    public const string DigsQuestion = "ground.who-digs";
    public const string FillsQuestion = "operator.who-fills";

    private static readonly Quantity None = Quantity.Of(0, "m³");

    public GroundFigures Figures => figures;

    public Inputs Inputs => inputs;

    public Quantity? HoleLength => Answer(HoleLengthQuestion, () => figures.Quantity("joint-hole", "length"));

    public Quantity? HoleWidth => Answer(HoleWidthQuestion, () => figures.Quantity("joint-hole", "width"));

    public Quantity? HoleDepth => No(HasHole) ? Quantity.Of(0, "m") : Answer(HoleDepthQuestion, () => CountedDepth);

    /// <summary>The depth with the assumed cover and cable: to count the spoil, not to dig by.</summary>
    public Quantity? CountedDepth => JointHole.Depth(figures, figures.Quantity("assumed-cover", "cover"), Cable, Gap);

    public Quantity? Cable => figures.Quantity("assumed-cable", "diameter");

    public Quantity? Gap => figures.Quantity("joint-hole", "gap");

    public Quantity? Bed => figures.Quantity("bed", "thickness");

    public Quantity? HoleVolume => No(HasHole) ? None : JointHole.Volume(figures, HoleLength, HoleWidth, HoleDepth);

    public Quantity? HoleSurface => No(HasHole) ? Quantity.Of(0, "m²") : JointHole.Surface(figures, HoleLength, HoleWidth);

    public Quantity? TrenchLength => No(HasTrench) ? Quantity.Of(0, "m") : Answer(TrenchLengthQuestion, () => Quantity.Of(0, "m"));

    public Quantity? TrenchWidth => figures.Quantity("trench-default", "width");

    public Quantity? Duct => Answer(DuctQuestion, () => figures.Quantity("trench-default", "duct-outside"));

    public Quantity? TrenchDepth => Answer(TrenchDepthQuestion, () => Trench.Depth(figures, figures.Quantity("trench-default", "cover"), figures.Quantity("trench-default", "duct-outside"), Bed));

    /// <summary>The cover over the duct that a trench of that depth leaves.</summary>
    public Quantity? TrenchCover => (TrenchDepth?.Base - Bed?.Base - Duct?.Base).NotUnderZero().Of("m");

    public Quantity? TrenchVolume => IsNothing(TrenchLength) ? None : Trench.Volume(figures, TrenchLength, TrenchWidth, TrenchDepth);

    public Quantity? TrenchSurface => IsNothing(TrenchLength) ? Quantity.Of(0, "m²") : Trench.Surface(figures, TrenchLength, TrenchWidth);

    public Quantity? Dug => (HoleVolume?.Base + TrenchVolume?.Base).Of("m³");

    public Soil? Soil => Soil.Answered(figures, inputs.Lookup);

    /// <summary>Yes, no, or null when nobody knows.</summary>
    public bool? Wet => inputs.Option(WetQuestion) switch
    {
        "yes" => true,
        "no" => false,
        _ => null,
    };

    /// <summary>Round the trunk of the nearest tree; null where nobody has said.</summary>
    public Quantity? Girth => inputs.Quantity(GirthQuestion);

    /// <summary>What the sides of the hole ask for; not known while soil or water could still decide it. A home without a hole has nothing to hold up.</summary>
    public SideAdvice Sides
    {
        get
        {
            var cautious = No(HasHole) ? SideAdvice.LookAndKeepBack : Ground.Sides.For(figures, HoleDepth, Soil, Wet);
            var couldStand = IsUnknown(SoilQuestion) || (Soil is { Stands: true } && IsUnknown(WetQuestion));
            return cautious == SideAdvice.SlopeOrSupport && couldStand ? SideAdvice.NotKnown : cautious;
        }
    }

    /// <summary>What covers the ground; null while nobody knows.</summary>
    public Surface? Surface => Surface.Answered(figures, inputs.Lookup, inputs.Lookup(SurfaceQuestion).Standing != Standing.NotAsked);

    /// <summary>The cut for the hole, and that for the trench; null while not known.</summary>
    public Cut? HoleCut => Surface?.Through(figures, HoleSurface, HoleDepth, Soil);

    public Cut? TrenchCut => IsNothing(TrenchLength) ? Surface?.Through(figures, TrenchSurface, Quantity.Of(0, "m"), Soil) : Surface?.Through(figures, TrenchSurface, TrenchDepth, Soil);

    /// <summary>All that comes out, layer by layer; null while soil or surface is not known.</summary>
    public ImmutableArray<Layer>? Spoiled => Soil is not null && HoleCut is { } hole && TrenchCut is { } trench ? [.. hole.Spoil, .. trench.Spoil] : null;

    public Quantity? Loose => IsNothing(Dug) ? None : Spoiled is { } layers ? Spoil.Loose(figures, layers) : null;

    public Quantity? Mass => IsNothing(Dug) ? Quantity.Of(0, "kg") : Spoiled is { } layers ? Spoil.Mass(figures, layers) : null;

    public Quantity? SandPacked
    {
        get
        {
            var hole = No(HasHole) ? None : Sand.InHole(figures, HoleLength, HoleWidth, Gap, Cable, Bed);
            var trench = IsNothing(TrenchLength) ? None : Sand.InTrench(figures, TrenchLength, TrenchWidth, Bed, Duct, Bed);
            return (hole?.Base + trench?.Base).Of("m³");
        }
    }

    /// <summary>The soil that the sand displaces, and what does not pack back. What is laid aside or made new fills its own room again.</summary>
    public Quantity? Surplus => IsNothing(Dug) ? None : Spoil.Surplus(figures, Earth, (Earth?.Base - SandPacked?.Base).NotUnderZero().Of("m³"), Soil?.Packing.Of(""));

    public Quantity? SurplusBags => IsNothing(Dug) ? Quantity.Number(0)
        : Soil is { } soil && Surplus is { } left && Spoiled is not null ? Away([new Layer(soil, left), .. Pieces]) : null;

    private Quantity? Earth => Spoiled is { } layers ? ((decimal?)(layers.Sum(l => l.Volume.Base) - Pieces.Sum(l => l.Volume.Base))).Of("m³") : null;

    private IEnumerable<Layer> Pieces => new[] { HoleCut?.Broken, TrenchCut?.Broken }.OfType<Layer>();

    private Quantity? Away(Layer[] layers) => Containers.Bags(figures, Spoil.Loose(figures, layers), Spoil.Mass(figures, layers));

    public static bool IsNothing(Quantity? quantity) => quantity is { Amount: 0 };

    public bool No(string fact) => inputs.Option(fact) == "no";

    private bool IsUnknown(string name) => inputs.Lookup(name).Standing == Standing.Unknown;

    private Quantity? Answer(string name, Func<Quantity?> otherwise) => inputs.Lookup(name).Standing == Standing.NotAsked ? otherwise() : inputs.Quantity(name);
}
