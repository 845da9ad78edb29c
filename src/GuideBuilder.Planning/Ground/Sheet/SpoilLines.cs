namespace GuideBuilder.Planning.Ground;

/// <summary>The lines about the spoil of the whole hole and trench: how much, how heavy, where it lies and what takes it away.</summary>
internal static class SpoilLines
{
    public static IEnumerable<SheetRow> Of(GroundDesk desk)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        string[] soil = desk.EarthRows;
        SheetFigure[] dug = [GroundDesk.Worked("hole-volume", home.HoleVolume), GroundDesk.Worked("trench-volume", home.TrenchVolume), desk.Answer(GroundHome.SurfaceQuestion), desk.Answer(GroundHome.SoilQuestion)];
        foreach (var row in LayerLines(desk, dug, soil))
        {
            yield return row;
        }

        SheetFigure[] spoil = [GroundDesk.Worked("spoil-loose", home.Loose), GroundDesk.Worked("spoil-mass", home.Mass)];
        yield return desk.Line("spoil-loose", "bulking", dug, home.Loose, soil);
        yield return desk.Line("spoil-mass", "mass", dug, home.Mass?.In(Unit.Of("t")), soil);
        yield return desk.Line("spoil-mass-range", "either-way", [spoil[1]], Around(home.Mass, figures.Row("uncertainty").Share("share")), [.. soil, "uncertainty"]);
        foreach (var row in HeapLines(desk, soil))
        {
            yield return row;
        }

        yield return desk.Line("barrow-loads", "volume-or-mass", spoil, Containers.Barrows(figures, home.Loose, home.Mass), [.. soil, "barrow"]);
        yield return desk.Line("bulk-bags", "volume-or-mass", spoil, Containers.Bags(figures, home.Loose, home.Mass), [.. soil, "bulk-bag"]);
        yield return desk.Line("skip", "skip", spoil, Skip(figures, home), [.. soil, "skip-margin", .. figures.Group("skip-").Select(r => r.Id)]);
        yield return desk.Line("surplus", "surplus", [.. dug, GroundDesk.Worked("sand-packed", home.SandPacked)], home.Surplus, soil);
        yield return desk.Line("surplus-bags", "volume-or-mass", [GroundDesk.Worked("surplus", home.Surplus)], home.SurplusBags, [.. soil, "bulk-bag"]);
    }

    // A layer of nothing is left out.
    private static IEnumerable<SheetRow> LayerLines(GroundDesk desk, SheetFigure[] dug, string[] soil)
    {
        var (hole, trench) = (desk.Home.HoleCut, desk.Home.TrenchCut);
        (string Id, Quantity? Volume)[] layers =
        [
            ("layer-aside", Sum(hole?.Aside, trench?.Aside)),
            ("layer-broken", Sum(hole, trench, c => c.Broken)),
            ("layer-bed", Sum(hole, trench, c => c.Bed)),
            ("layer-below", desk.Home.Soil is null ? null : Sum(hole, trench, c => c.Below)),
        ];
        return from layer in layers where !GroundHome.IsNothing(layer.Volume) select desk.Line(layer.Id, "layer", dug, layer.Volume, soil);
    }

    private static IEnumerable<SheetRow> HeapLines(GroundDesk desk, string[] soil)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var heap = Heap.Ridge(figures, home.Loose, figures.Quantity("heap", "length"), home.Soil?.Row.Find("repose"));
        SheetFigure[] inputs = [GroundDesk.Worked("spoil-loose", home.Loose), desk.Taken("heap", "length")];
        yield return desk.Line("heap-width", "ridge", inputs, heap?.Width, soil);
        yield return desk.Line("heap-height", "ridge", inputs, heap?.Height, soil);
        yield return desk.Line("set-back", "as-deep-or-more", [GroundDesk.Worked("hole-depth", home.HoleDepth)], Heap.SetBack(figures, home.HoleDepth), "set-back-default", "set-back-united-states", "set-back-norway");
    }

    private static Quantity? Sum(Quantity? hole, Quantity? trench) => (hole?.Base + trench?.Base).Of("m³");

    private static Quantity? Sum(Cut? hole, Cut? trench, Func<Cut, Layer?> layer) =>
        hole is null || trench is null ? null : Sum(layer(hole)?.Volume ?? Quantity.Of(0, "m³"), layer(trench)?.Volume ?? Quantity.Of(0, "m³"));

    private static Value.Option? Skip(GroundFigures figures, GroundHome home) => Containers.Skip(figures, home.Loose, home.Mass) switch
    {
        null => null,
        { Skip: { } row } => new(row.Id),
        _ => new("more-than-one"),
    };

    private static Value.Spread? Around(Quantity? mass, decimal? share) => mass?.In(Unit.Of("t")) is { } tonnes && share is { } either
        ? new(tonnes with { Amount = tonnes.Amount * (1 - either) }, tonnes with { Amount = tonnes.Amount * (1 + either) })
        : null;
}
