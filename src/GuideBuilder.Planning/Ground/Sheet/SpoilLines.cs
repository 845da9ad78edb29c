namespace GuideBuilder.Planning.Ground;

/// <summary>The lines about the spoil of the whole hole and trench: how much, how heavy, where it lies and what takes it away.</summary>
internal static class SpoilLines
{
    public static IEnumerable<SheetRow> Of(GroundDesk desk)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        string[] soil = home.Soil is { } known ? [known.Row.Id] : [];
        SheetFigure[] dug = [GroundDesk.Worked("hole-volume", home.HoleVolume), GroundDesk.Worked("trench-volume", home.TrenchVolume), desk.Answer(GroundHome.SoilQuestion)];
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

    private static IEnumerable<SheetRow> HeapLines(GroundDesk desk, string[] soil)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var heap = Heap.Ridge(figures, home.Loose, figures.Quantity("heap", "length"), home.Soil?.Row.Find("repose"));
        SheetFigure[] inputs = [GroundDesk.Worked("spoil-loose", home.Loose), desk.Taken("heap", "length")];
        yield return desk.Line("heap-width", "ridge", inputs, heap?.Width, soil);
        yield return desk.Line("heap-height", "ridge", inputs, heap?.Height, soil);
        yield return desk.Line("set-back", "as-deep-or-more", [GroundDesk.Worked("hole-depth", home.HoleDepth)], Heap.SetBack(figures, home.HoleDepth), "set-back-default", "set-back-united-states", "set-back-norway");
    }

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
