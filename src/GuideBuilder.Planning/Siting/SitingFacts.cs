using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Siting;

/// <summary>The fact place.siting that conditions may use: the worst verdict of all rules.</summary>
public static class SitingFacts
{
    private const string Place = "place.kind";

    private static readonly ImmutableArray<string> Asked =
    [
        "home.supply-number", "place.gas-distance", "place.near", "place.room-use", "place.flood", "place.only-stair", "home.block-stair", "place.clear-space", "place.height", "place.box-metal",
        "place.hub-distance", "place.wall", "place.wall-stays", "place.party-wall", "home.heritage", "works.enclosing", "operator.cabinet-height",
    ];

    /// <summary>The calculator: a conflict settles it whatever else is not known.</summary>
    internal static ImmutableArray<Calculator> Calculators() =>
        [new("place.siting", ["home.nation", Place], Asked, inputs => Worst(SitingRules.Of(inputs.Lookup, inputs.Tables))) { DecidesEarly = true }];

    /// <summary>Conflicts if one rule does; else null while one is not known; else ask if one does; else meets. Null without rules.</summary>
    internal static Value.Option? Worst(ImmutableArray<SitingVerdict> verdicts) =>
        verdicts.IsEmpty ? null
        : verdicts.Any(v => v.Outcome == SitingOutcome.Conflicts) ? new("conflicts")
        : verdicts.Any(v => v.Outcome == SitingOutcome.NotKnown) ? null
        : verdicts.Any(v => v.Outcome == SitingOutcome.Ask) ? new("ask")
        : new("meets");
}
