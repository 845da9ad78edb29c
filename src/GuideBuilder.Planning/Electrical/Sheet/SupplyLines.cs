namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about what the network keeps to, and what it wants to know of a second source. Each holds in the nations of its row.</summary>
internal static class SupplyLines
{
    private static readonly ImmutableArray<string> Sources = ["loads.solar", "loads.battery", "loads.back-feed-car", "loads.generator"];

    public static IEnumerable<SheetRow> Of(SheetDesk desk)
    {
        if (HoldsHere(desk, "supply-limits"))
        {
            yield return desk.Line("supply-voltage", "either-side", [desk.Cell("nominal-voltage", "single")], Spread(Declared.Voltage(desk.Figures)), "supply-limits");
            yield return desk.Line("supply-frequency", "either-side", [], Spread(Declared.Frequency(desk.Figures)), "supply-frequency");
        }

        if (HoldsHere(desk, "generation-told-afterwards") && Sources.Any(s => MayBeThere(desk, s)))
        {
            yield return desk.Line("generation", "told-afterwards", [desk.Cell("generation-told-afterwards", "current")], SheetDesk.Worth(Declared.LargestToldAfterwards(desk.Figures)), "nominal-voltage");
        }
    }

    private static bool HoldsHere(SheetDesk desk, string row) => desk.Figures.Row(row).List("nations").Contains(desk.Inputs.Option("home.nation"));

    private static bool MayBeThere(SheetDesk desk, string question) => desk.Inputs.Lookup(question).Standing != Standing.NotAsked && desk.Inputs.Option(question) != "no";

    private static Value.Spread? Spread((Quantity Least, Quantity Most)? between) => between is { } found ? new(found.Least, found.Most) : null;
}
