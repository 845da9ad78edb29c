using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>The facts electrical.… that conditions and costs may use.</summary>
public static class ElectricalFacts
{
    /// <summary>By name: its value, or null while an answer it rests on is not known or out of range.</summary>
    public static IReadOnlyDictionary<string, Func<Lookup, Tables, Value?>> ByName { get; } =
        Calculators().ToFrozenDictionary(c => c.Name, c => (Func<Lookup, Tables, Value?>)((lookup, tables) => c.Of(lookup, tables).Value), StringComparer.Ordinal);

    /// <summary>The same as calculators, with the questions that each rests on.</summary>
    internal static ImmutableArray<Calculator> Calculators() =>
    [
        new("electrical.maximum-demand", HomeLoads.Needs, HomeLoads.MayUse, Demand),
        new("electrical.demand-share-of-fuse", [.. HomeLoads.Needs, "intake.fuse-rating"], HomeLoads.MayUse, Share),
        new("electrical.tails-limit", [], ["operator.tails-limit"], TailsLimit),
        new("electrical.switch-fuse", ["place.tails-length"], ["operator.tails-limit"], Switch),
    ];

    private static Value.Amount? Demand(Inputs inputs) =>
        HomeLoads.Demand(ElectricalFigures.From(inputs.Tables), inputs) is { } found ? Amount(found.Demand.Highest) : null;

    private static Value.Amount? Share(Inputs inputs)
    {
        var figures = ElectricalFigures.From(inputs.Tables);
        return inputs.Quantity("intake.fuse-rating") is { } fuse && HomeLoads.Demand(figures, inputs) is { } found
            ? Amount(MaximumDemand.ShareOfFuse(figures, found.Demand.Highest, fuse))
            : null;
    }

    private static Value.Amount? TailsLimit(Inputs inputs)
    {
        var figures = ElectricalFigures.From(inputs.Tables);
        return Amount(inputs.Quantity("operator.tails-limit") is { } answered ? figures.Metres(answered).Of("m") : Tails.Usual(figures));
    }

    private static Value.Option? Switch(Inputs inputs) =>
        Option(Tails.Need(ElectricalFigures.From(inputs.Tables), inputs.Quantity("place.tails-length"), inputs.Quantity("operator.tails-limit")));

    private static Value.Amount? Amount(Quantity? quantity) => quantity is null ? null : new(quantity);

    /// <summary>The option that stands for it in conditions; null while not known.</summary>
    internal static Value.Option? Option(SwitchFuse need) => need switch
    {
        SwitchFuse.NotNeeded => new("not-needed"),
        SwitchFuse.Ask => new("ask"),
        SwitchFuse.Needed => new("needed"),
        _ => null,
    };
}
