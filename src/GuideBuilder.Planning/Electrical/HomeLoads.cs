using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>A load of a home as the answers give it: the question or table row it comes from, how it came to us, and the load itself, null while the answer is not known or out of range.</summary>
internal sealed record HomeLoad(string Name, FigureOrigin Origin, Load? Load);

/// <summary>From answers to loads. Questions that give kilowatts are taken as they are; those that say only that something is there take a typical figure of the table, which is named beside the result.</summary>
internal static class HomeLoads
{
    private static readonly ImmutableArray<(string Question, LoadKind Kind)> InKilowatts = [("loads.shower", LoadKind.InstantWater), ("loads.cooker", LoadKind.Cooking)];

    private static readonly ImmutableArray<(string Question, LoadKind Kind, string Row)> Present =
    [
        ("loads.heat-pump", LoadKind.HeatPump, "typical-heat-pump"),
        ("loads.charger", LoadKind.Charger, "typical-charger"),
        ("loads.storage-heating", LoadKind.StorageHeating, "typical-storage-heating"),
        ("loads.hot-tub", LoadKind.StoredWater, "typical-hot-tub"),
        ("loads.outbuilding", LoadKind.OtherSocket, "typical-outbuilding"),
        ("loads.workshop", LoadKind.OtherSocket, "typical-workshop"),
    ];

    private static readonly ImmutableArray<(string Row, LoadKind Kind)> Always =
        [("typical-lighting", LoadKind.Lighting), ("typical-circuit-1", LoadKind.StandardCircuit), ("typical-circuit-2", LoadKind.StandardCircuit)];

    /// <summary>The questions that a demand cannot do without.</summary>
    public static ImmutableArray<string> Needs { get; } = [.. InKilowatts.Select(q => q.Question)];

    /// <summary>The questions that it uses where they were asked.</summary>
    public static ImmutableArray<string> MayUse { get; } = [.. Present.Select(p => p.Question), "intake.phases"];

    /// <summary>The loads in a fixed order; what is not there is left out.</summary>
    public static ImmutableArray<HomeLoad> Of(ElectricalFigures figures, Inputs inputs) =>
    [
        .. Always.Select(a => new HomeLoad(a.Row, FigureOrigin.Assumed, Typical(figures, a.Row, a.Kind))),
        .. InKilowatts.Select(q => InPower(figures, inputs, q.Question, q.Kind)).OfType<HomeLoad>(),
        .. Present.Select(p => IfThere(figures, inputs, p)).OfType<HomeLoad>(),
    ];

    /// <summary>The demand of the most loaded line: everything on one line, or shared out as evenly as can be where there are three. Null while the phases or a load are not known.</summary>
    public static (MaximumDemand Demand, ImmutableArray<Load> Loads)? Demand(ElectricalFigures figures, Inputs inputs)
    {
        var home = Of(figures, inputs);
        if (home.Any(l => l.Load is null) || inputs.Lookup("intake.phases").Standing == Standing.Unknown)
        {
            return null;
        }

        var loads = home.Select(l => l.Load!).ToImmutableArray();
        var placed = inputs.Option("intake.phases") == "three" ? LineBalance.Allocate(figures, loads) : loads;
        return placed is { } all && MaximumDemand.Of(figures, all) is { } demand ? (demand, all) : null;
    }

    private static HomeLoad? InPower(ElectricalFigures figures, Inputs inputs, string question, LoadKind kind) => inputs.Lookup(question).Standing switch
    {
        Standing.NotAsked => null,
        _ when inputs.Quantity(question) is { } power => power.Amount == 0 ? null : new(question, FigureOrigin.Answered, OfPower(figures, question, kind, power)),
        _ => new(question, FigureOrigin.Answered, null),
    };

    private static HomeLoad? IfThere(ElectricalFigures figures, Inputs inputs, (string Question, LoadKind Kind, string Row) load) => (inputs.Lookup(load.Question).Standing, inputs.Option(load.Question)) switch
    {
        (Standing.Unknown, _) => new(load.Question, FigureOrigin.Answered, null),
        (Standing.Known, not ("no" or "none")) => new(load.Row, FigureOrigin.Assumed, Typical(figures, load.Row, load.Kind)),
        _ => null,
    };

    private static Load? Typical(ElectricalFigures figures, string row, LoadKind kind) =>
        figures.Quantity(row, "current") is { } current ? new(row, kind, current) : figures.Quantity(row, "power") is { } power ? OfPower(figures, row, kind, power) : null;

    private static Load? OfPower(ElectricalFigures figures, string name, LoadKind kind, Quantity power) =>
        Power.Current(figures, power) is { } current ? new(name, kind, current) : null;
}
