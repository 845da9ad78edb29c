namespace GuideBuilder.Planning.Electrical;

/// <summary>What loads of one kind count for together. Source: IET Guidance Note 1 table H2 and the Electrician's Guide table 6.2, in rows diversity-….</summary>
public static class Diversity
{
    /// <summary>Allowance in amps for loads of one kind (all those given count as that kind): null if a current is outside 0 to 3,000 A, or the table has no rule for that kind in those premises. Nothing counts for nothing.</summary>
    public static Quantity? Allowance(ElectricalFigures figures, Premises premises, LoadKind kind, IEnumerable<Load> loads) =>
        Amps(figures, premises, kind, [.. loads]).Of("A");

    internal static decimal? Amps(ElectricalFigures figures, Premises premises, LoadKind kind, ImmutableArray<Load> loads)
    {
        var row = figures.Row($"diversity-{Id(premises)}-{Id(kind)}");
        var currents = loads.Select(l => figures.Amps(l.Current)).ToArray();
        return currents.Length == 0 ? 0 : currents.Contains(null) ? null : ByRule(row, [.. currents.OfType<decimal>()]) + Sockets(row, loads);
    }

    private static decimal? ByRule(TableRow? row, decimal[] currents) => row.Words("rule") switch
    {
        "all" => row.Share("share") * currents.Sum(),
        "above" => row.In("first", "A") is { } first ? Math.Min(first, currents.Sum()) + (row.Share("share-above") * Math.Max(0, currents.Sum() - first)) : null,
        "ranked" => currents.OrderDescending().Select((c, rank) => row.Share(Rank(rank)) * c).Total(),
        _ => null,
    };

    private static decimal? Sockets(TableRow? row, ImmutableArray<Load> loads) =>
        loads.Count(l => l.WithSocket) is > 0 and var sockets ? row.In("socket", "A") * sockets : 0;

    private static string Rank(int rank) => rank switch
    {
        0 => "largest",
        1 => "second",
        _ => "others",
    };

    private static string Id(Premises premises) => premises switch
    {
        Premises.Household => "household",
        Premises.Shop => "shop",
        Premises.Hotel => "hotel",
        _ => throw new UnreachableException(),
    };

    internal static string Id(LoadKind kind) => kind switch
    {
        LoadKind.Lighting => "lighting",
        LoadKind.Heating => "heating",
        LoadKind.Cooking => "cooking",
        LoadKind.Motor => "motor",
        LoadKind.InstantWater => "instant-water",
        LoadKind.StoredWater => "stored-water",
        LoadKind.FloorWarming => "floor-warming",
        LoadKind.StorageHeating => "storage-heating",
        LoadKind.StandardCircuit => "standard-circuit",
        LoadKind.OtherSocket => "other-socket",
        LoadKind.Charger => "charger",
        LoadKind.HeatPump => "heat-pump",
        LoadKind.Battery => "battery",
        _ => throw new UnreachableException(),
    };
}
