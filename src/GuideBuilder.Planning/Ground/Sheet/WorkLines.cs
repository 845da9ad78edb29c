namespace GuideBuilder.Planning.Ground;

/// <summary>The lines about hours, sand, filling, the trench, and who digs.</summary>
internal static class WorkLines
{
    public static IEnumerable<SheetRow> Hours(GroundDesk desk)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        string[] soil = desk.EarthRows;
        var (digger, filler) = (GroundWork.PersonRow(home, GroundHome.DigsQuestion), GroundWork.PersonRow(home, GroundHome.FillsQuestion));
        var (dig, barrow) = (GroundWork.DigHours(home), GroundWork.BarrowHours(home));
        SheetFigure[] both = [GroundDesk.Worked("dig-hours", dig), GroundDesk.Worked("barrow-hours", barrow)];
        SheetFigure[] dug = [GroundDesk.Worked("hole-volume", home.HoleVolume), GroundDesk.Worked("trench-volume", home.TrenchVolume), desk.Answer(GroundHome.SurfaceQuestion), desk.Answer(GroundHome.SoilQuestion)];
        SheetFigure[] care = [desk.Answer(GroundHome.WetQuestion), desk.Answer(GroundHome.TreesQuestion), desk.Answer(GroundHome.DigsQuestion)];
        string[] factors = ["care-cable", "care-roots", "care-wet", digger];
        yield return desk.Line("dig-hours", "rate-person-care", [.. dug, .. care], dig, [.. soil, .. factors]);
        yield return desk.Line("dig-hours-range", "rate-person-care", [.. dug, .. care], Between(GroundWork.DigHours(home, "least"), GroundWork.DigHours(home, "most")), [.. soil, .. factors]);
        yield return desk.Line("barrow-hours", "barrow-rate", [GroundDesk.Worked("spoil-loose", home.Loose), desk.Taken("barrow-near", "up-to"), desk.Answer(GroundHome.DigsQuestion)], barrow, [.. soil, digger]);
        yield return desk.Line("hours-alone", "one-after-another", both, Labour.Elapsed(figures, dig, barrow, helper: false), [.. soil, digger]);
        yield return desk.Line("hours-with-helper", "side-by-side", both, Labour.Elapsed(figures, dig, barrow, helper: true), [.. soil, digger]);
        yield return desk.Line("fill-hours", "rate-person", [.. dug, desk.Answer(GroundHome.FillsQuestion)], GroundWork.FillHours(home), [.. soil, filler]);
    }

    public static IEnumerable<SheetRow> Filling(GroundDesk desk)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var order = Sand.ToOrder(figures, home.SandPacked);
        var sandHeight = Sand.HeightInHole(figures, home.Gap, home.Cable, home.Bed);
        var above = home.HoleDepth is { } depth && sandHeight is { } sand ? Quantity.Of(Math.Max(0, depth.Base - sand.Base), "m") : null;
        SheetFigure[] hole = [desk.Answer(GroundHome.HoleLengthQuestion), desk.Answer(GroundHome.HoleWidthQuestion), desk.Taken("joint-hole", "gap"), desk.Taken("assumed-cable", "diameter"), desk.Cell("bed", "thickness")];
        SheetFigure[] trench = [desk.Answer(GroundHome.TrenchLengthQuestion), desk.Taken("trench-default", "width"), desk.Answer(GroundHome.DuctQuestion)];
        yield return desk.Line("sand-packed", "sand", [.. hole, .. trench], home.SandPacked);
        yield return desk.Line("sand-order", "sand-order", [GroundDesk.Worked("sand-packed", home.SandPacked)], order, "sand-material");
        yield return desk.Line("sand-bags", "sand-bags", [GroundDesk.Worked("sand-order", order)], Containers.SandBags(figures, order), "sand-bag");
        yield return desk.Line("layers", "layers", [GroundDesk.Worked("hole-depth", home.HoleDepth), desk.Cell("layers", "by-hand")], Ground.Filling.Layers(figures, above, figures.Quantity("layers", "by-hand")), "bed");
        foreach (var machine in new[] { "vibrotamper-50", "rammer-10" })
        {
            // A soil that is not known counts as one that holds together, which takes as many passes or more.
            var passes = Ground.Filling.Passes(figures, machine, home.Soil is not { Stands: false }, figures.Quantity("layers", "by-hand"));
            yield return desk.Line("passes-" + machine, "passes", [desk.Answer(GroundHome.SoilQuestion), desk.Cell("layers", "by-hand")], passes, "passes-" + machine);
        }

        yield return desk.Line("tape-depth", "tape", [GroundDesk.Worked("trench-depth", home.TrenchDepth), desk.Answer(GroundHome.DuctQuestion), desk.Cell("bed", "thickness"), desk.Cell("trench-default", "tape-above")], Ground.Filling.TapeDepth(figures, home.TrenchCover));
        yield return desk.Line("separation", "as-tabled", [], figures.Quantity("separation", "default"), "separation");
        if (!home.No(GroundHome.TreesQuestion))
        {
            yield return desk.Line("tree", "as-tabled", [desk.Answer(GroundHome.TreesQuestion)], figures.Quantity("trees", "no-digging"), "trees");
            yield return desk.Line("tree-hands", "tree-hands", [desk.Answer(GroundHome.GirthQuestion), desk.Cell("trees", "girths")], Clearances.HandDigging(figures, home.Girth), "trees");
        }

        yield return desk.Line("bend", "times-width", [desk.Taken("assumed-cable", "diameter")], Clearances.Bend(figures, "bend-lead", home.Cable), "bend-lead", "bend-plastic");
    }

    public static IEnumerable<SheetRow> Trenches(GroundDesk desk)
    {
        var home = desk.Home;
        SheetFigure[] size = [desk.Answer(GroundHome.TrenchLengthQuestion), desk.Taken("trench-default", "width"), GroundDesk.Worked("trench-depth", home.TrenchDepth)];
        yield return desk.Line("trench-depth", "as-the-letter-says", [desk.Answer(GroundHome.TrenchDepthQuestion)], home.TrenchDepth);
        yield return desk.Line("trench-volume", "upright", size, home.TrenchVolume);
    }

    public static IEnumerable<SheetRow> WhoDigs(GroundDesk desk, Lookup known)
    {
        foreach (var (part, id, question) in new[] { (DigPart.Ground, "digs-ground", GroundHome.DigsQuestion), (DigPart.Uncovering, "digs-uncovering", "ground.who-uncovers"), (DigPart.Filling, "digs-filling", GroundHome.FillsQuestion) })
        {
            yield return desk.Line(id, "who-digs", [desk.Answer("ground.joint-place"), desk.Answer(question)], new Value.Option(Word(MayDig.For(part, known))));
        }
    }

    private static Value.Spread? Between(Quantity? least, Quantity? most) => least is not null && most is not null ? new(least, most) : null;

    private static string Word(Digger digger) => digger switch
    {
        Digger.Ask => "ask",
        Digger.Household => "household",
        Digger.Contractor => "contractor",
        Digger.TrainedContractor => "trained-contractor",
        Digger.Operator => "operator",
        _ => throw new UnreachableException(),
    };
}
