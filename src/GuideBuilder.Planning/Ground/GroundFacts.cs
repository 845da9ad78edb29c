using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Ground;

/// <summary>The facts ground.… that conditions and costs may use: the whole hole and trench, whoever digs them.</summary>
public static class GroundFacts
{
    private static readonly ImmutableArray<string> Hole = [GroundHome.HoleLengthQuestion, GroundHome.HoleWidthQuestion, GroundHome.HoleDepthQuestion];
    private static readonly ImmutableArray<string> TrenchSize = [GroundHome.TrenchLengthQuestion, GroundHome.TrenchDepthQuestion];
    private static readonly ImmutableArray<string> Both = [.. Hole, .. TrenchSize];
    private static readonly ImmutableArray<string> Ground = [GroundHome.SoilQuestion, GroundHome.SurfaceQuestion];
    private static readonly ImmutableArray<string> Earth = [.. Both, .. Ground];
    private static readonly ImmutableArray<string> Care = [GroundHome.WetQuestion, GroundHome.TreesQuestion, GroundHome.DigsQuestion];
    private static readonly ImmutableArray<string> SandSize = [GroundHome.HoleLengthQuestion, GroundHome.HoleWidthQuestion, GroundHome.TrenchLengthQuestion, GroundHome.DuctQuestion];

    /// <summary>By name: its value, or null while an answer it rests on is not known or out of range.</summary>
    public static IReadOnlyDictionary<string, Func<Lookup, Tables, Value?>> ByName { get; } =
        Calculators().ToFrozenDictionary(c => c.Name, c => (Func<Lookup, Tables, Value?>)((lookup, tables) => c.Of(lookup, tables).Value), StringComparer.Ordinal);

    /// <summary>The same as calculators, with the questions and facts that each rests on.</summary>
    internal static ImmutableArray<Calculator> Calculators() =>
    [
        OfHole("ground.hole-depth", [GroundHome.HoleDepthQuestion], h => h.HoleDepth),
        OfHole("ground.hole-volume", Hole, h => h.HoleVolume),
        OfHole("ground.hole-surface", [GroundHome.HoleLengthQuestion, GroundHome.HoleWidthQuestion], h => h.HoleSurface),
        Of("ground.trench-volume", [GroundHome.HasTrench], TrenchSize, h => h.TrenchVolume),
        Of("ground.trench-surface", [GroundHome.HasTrench], [GroundHome.TrenchLengthQuestion], h => h.TrenchSurface),
        OfBoth("ground.spoil-loose", Earth, h => h.Loose),
        OfBoth("ground.spoil-mass", Earth, h => h.Mass?.In(Unit.Of("t"))),
        OfBoth("ground.barrow-loads", Earth, h => Containers.Barrows(h.Figures, h.Loose, h.Mass)),
        OfBoth("ground.bulk-bags", Earth, h => Containers.Bags(h.Figures, h.Loose, h.Mass)),
        OfBoth("ground.surplus-bags", [.. Earth, GroundHome.DuctQuestion], h => h.SurplusBags),
        OfHole("ground.hole-hours", [.. Hole, .. Ground, .. Care], h => GroundWork.HoleHours(h)),
        OfHole("ground.hole-hours-least", [.. Hole, .. Ground, .. Care], h => GroundWork.HoleHours(h, "least")),
        OfHole("ground.hole-hours-most", [.. Hole, .. Ground, .. Care], h => GroundWork.HoleHours(h, "most")),
        Of("ground.trench-hours", [GroundHome.HasTrench], [.. TrenchSize, .. Ground, .. Care], h => GroundWork.TrenchHours(h)),
        Of("ground.trench-hours-least", [GroundHome.HasTrench], [.. TrenchSize, .. Ground, .. Care], h => GroundWork.TrenchHours(h, "least")),
        Of("ground.trench-hours-most", [GroundHome.HasTrench], [.. TrenchSize, .. Ground, .. Care], h => GroundWork.TrenchHours(h, "most")),
        OfBoth("ground.dig-hours", [.. Earth, .. Care], h => GroundWork.DigHours(h)),
        OfBoth("ground.fill-hours", [.. Earth, GroundHome.FillsQuestion], h => GroundWork.FillHours(h)),
        OfBoth("ground.sand-volume", SandSize, h => h.SandPacked),
        OfBoth("ground.sand-bags", SandSize, h => Containers.SandBags(h.Figures, Sand.ToOrder(h.Figures, h.SandPacked))),
        new("ground.hole-sides", [GroundHome.HasHole], [GroundHome.HoleDepthQuestion, GroundHome.SoilQuestion, GroundHome.WetQuestion], inputs => Option(new GroundHome(GroundFigures.From(inputs.Tables), inputs).Sides)) { DecidesEarly = true },
    ];

    private static Value.Option? Option(SideAdvice advice) => advice switch
    {
        SideAdvice.LookAndKeepBack => new("look"),
        SideAdvice.SlopeOrSupport or SideAdvice.NeverAlone => new("support"),
        SideAdvice.FirmWithSupport => new("firm"),
        _ => null,
    };

    private static Calculator OfHole(string name, ImmutableArray<string> mayUse, Func<GroundHome, Quantity?> work) => Of(name, [GroundHome.HasHole], mayUse, work);

    private static Calculator OfBoth(string name, ImmutableArray<string> mayUse, Func<GroundHome, Quantity?> work) => Of(name, [GroundHome.HasHole, GroundHome.HasTrench], mayUse, work);

    // A home that opens no ground needs no size of a hole, so these decide as soon as they can.
    private static Calculator Of(string name, ImmutableArray<string> needs, ImmutableArray<string> mayUse, Func<GroundHome, Quantity?> work) =>
        new(name, needs, mayUse, inputs => work(new(GroundFigures.From(inputs.Tables), inputs)) is { } found ? new Value.Amount(found) : null) { DecidesEarly = true };
}
