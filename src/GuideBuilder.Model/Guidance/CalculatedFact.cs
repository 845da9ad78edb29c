namespace GuideBuilder.Model;

/// <summary>A fact that arithmetic gives: the name that conditions and costs may use, its kind, its unit for a quantity, and its options for a choice. The arithmetic itself belongs to Planning; a test holds the two lists together.</summary>
public sealed record CalculatedFact(string Name, QuestionKind Kind, Unit? Unit, ImmutableArray<string> Options)
{
    /// <summary>The way under consideration, which the planner sets.</summary>
    public const string Way = "way";

    /// <summary>How long the house is without supply on the works day; read off the finished plan.</summary>
    public const string OffSupplyHours = "plan.off-supply-hours";

    /// <summary>The months (1 to 12) in which the works day may fall; read off the finished plan.</summary>
    public const string Months = "plan.months";

    /// <summary>Every calculator's fact, in the order of the guide for editors.</summary>
    public static ImmutableArray<CalculatedFact> All { get; } =
    [
        Quantity("ground.hole-depth", "m"),
        Quantity("ground.hole-volume", "m³"),
        Quantity("ground.hole-surface", "m²"),
        Quantity("ground.trench-volume", "m³"),
        Quantity("ground.trench-surface", "m²"),
        Quantity("ground.spoil-loose", "m³"),
        Quantity("ground.spoil-mass", "t"),
        Quantity("ground.barrow-loads", ""),
        Quantity("ground.bulk-bags", ""),
        Quantity("ground.surplus-bags", ""),
        Quantity("ground.hole-hours", "hours"),
        Quantity("ground.hole-hours-least", "hours"),
        Quantity("ground.hole-hours-most", "hours"),
        Quantity("ground.trench-hours", "hours"),
        Quantity("ground.trench-hours-least", "hours"),
        Quantity("ground.trench-hours-most", "hours"),
        Quantity("ground.dig-hours", "hours"),
        Quantity("ground.fill-hours", "hours"),
        Quantity("ground.sand-volume", "m³"),
        Quantity("ground.sand-bags", ""),
        new("ground.hole-sides", QuestionKind.Choice, null, ["look", "support", "firm"]),
        Quantity("electrical.maximum-demand", "A"),
        Quantity("electrical.demand-share-of-fuse", "%"),
        Quantity("electrical.tails-limit", "m"),
        new("electrical.switch-fuse", QuestionKind.Choice, null, ["not-needed", "needed", "ask"]),
        new("supply.number", QuestionKind.Choice, null, ["electricity-gb", "electricity-ni-or-ie", "gas", "not-a-supply-number"]),
        new("supply.area", QuestionKind.Choice, null, ["regional", "independent", "northern-ireland", "ireland", "not-known"]),
        new("place.siting", QuestionKind.Choice, null, ["meets", "ask", "conflicts"]),
    ];

    private static CalculatedFact Quantity(string name, string symbol) => new(name, QuestionKind.Quantity, Unit.Of(symbol), []);
}
