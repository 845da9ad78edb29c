using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>What the ground checks share: the figures of content/, short ways to write quantities, the usual hole, and the sources they cite.</summary>
internal static class GroundCase
{
    public const string Subject = "ground";
    public const string Geometry = "Geometry, worked out apart";
    public const string Slopes = "Geometry, with slopes of OSHA 29 CFR 1926 subpart P";
    public const string Tabled = "Tables of bulking and density, worked out apart";
    public const string Labour = "Hand labour outputs (Planning Planet), worked out apart";
    public const string LearningPack = "Groundworks, learning pack 1, worked out apart";
    public const string LabourFactors = "Labour factors for excavation (Menlo Academy), worked out apart";
    public const string SkipHirer = "How much soil fits an 8-yard skip (Norman Wenn skip hire)";
    public const string Estimating = "Estimating text, examples 9-2 and 9-3";
    public const string CubicYard = "Cubic yard in the ground, worked (Expertsmind)";
    public const string ClaySwell = "Clay swell problem (Tutorsglobe): its inputs, answer worked out apart";
    public const string VolumeChange = "Note on volume change and bulking";
    public const string SwellFactors = "Swell factors for various soils (Project Engineer)";
    public const string ExcavationBasics = "Excavation calculation basics (Civil Engineering Degrees), converted";
    public const string TrenchRule = "New connections, mains trenching and cable laying guide (Scottish and Southern Electricity Networks)";
    public const string Trees = "Guidelines for utility works near trees, handout for operatives (National Joint Utilities Group)";
    public const string BendHabit = "Bend of 8 and 12 times the width, a habit of the trade";
    public const string FootingHabit = "The 45-degree line, a habit of the trade";
    public const string SmallOpening = "Specification for the Reinstatement of Openings in Highways, S1.5";

    public static readonly GroundFigures Figures = GroundFigures.From(Content.Guidance.Tables);

    public static readonly Quantity Square = Metres(1.2m);

    /// <summary>Cover 0.45 m over a cable of 25 mm.</summary>
    public static readonly Quantity FirstDepth = DepthOf(0.45m, 0.025m);

    /// <summary>Cover 0.6 m over a cable of 50 mm.</summary>
    public static readonly Quantity SecondDepth = DepthOf(0.6m, 0.05m);

    public static readonly Quantity FirstVolume = VolumeOf(FirstDepth);

    public static Quantity Metres(decimal amount) => Quantity.Of(amount, "m");

    public static Quantity Cubic(decimal amount) => Quantity.Of(amount, "m³");

    public static Quantity Kilograms(decimal amount) => Quantity.Of(amount, "kg");

    public static Quantity Hours(decimal amount) => Quantity.Of(amount, "hours");

    public static Quantity Number(decimal amount) => Quantity.Number(amount);

    public static Quantity DepthOf(decimal cover, decimal cable) => JointHole.Depth(Figures, Metres(cover), Metres(cable), Metres(0.2m))!;

    public static Quantity VolumeOf(Quantity depth) => JointHole.Volume(Figures, Square, Square, depth)!;

    public static Soil Named(string name) => Soil.Find(Figures, name)!;

    public static Quantity? Loose(string soil, Quantity volume) => Spoil.Loose(Figures, new Layer(Named(soil), volume));

    public static Quantity? Mass(string soil, Quantity volume) => Spoil.Mass(Figures, new Layer(Named(soil), volume));

    /// <summary>Within a share of the expected amount, in the unit of the quantity.</summary>
    public static void Near(decimal expected, Quantity? actual, decimal percent)
    {
        Assert.NotNull(actual);
        Assert.InRange(actual.Amount, expected * (1 - (percent / 100)), expected * (1 + (percent / 100)));
    }
}
