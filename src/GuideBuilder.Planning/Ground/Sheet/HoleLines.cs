namespace GuideBuilder.Planning.Ground;

/// <summary>The lines about the joint hole and its sides.</summary>
internal static class HoleLines
{
    private static readonly string[] Depths = ["depth-slope-loose", "depth-slope-all", "depth-stop"];

    public static IEnumerable<SheetRow> Of(GroundDesk desk)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        SheetFigure[] size = [desk.Answer(GroundHome.HoleLengthQuestion), desk.Answer(GroundHome.HoleWidthQuestion), GroundDesk.Worked("hole-depth", home.HoleDepth)];
        yield return desk.Line(
            "counted-depth", "cover-cable-gap", [desk.Taken("assumed-cover", "cover"), desk.Taken("assumed-cable", "diameter"), desk.Taken("joint-hole", "gap")], home.CountedDepth, "cable-depths-met");
        yield return desk.Line("hole-depth", "as-the-letter-says", [desk.Answer(GroundHome.HoleDepthQuestion)], home.HoleDepth);
        yield return desk.Line("hole-volume", "upright", size, home.HoleVolume);
        foreach (var row in SideLines(desk, size))
        {
            yield return row;
        }

        yield return desk.Limited(
            "footing-line", "45-degrees", [GroundDesk.Worked("hole-depth", home.HoleDepth)], Clearances.FromFooting(figures, home.HoleDepth, Quantity.Of(0, "m")), desk.Answer("ground.footing-distance"), "footing-line");
        yield return desk.Line("barrier", "barrier", size[..2], Guarding.Barrier(figures, home.HoleLength, home.HoleWidth), "barrier");
        yield return desk.Line(
            "rain", "rain", [.. size[..2], desk.Cell("rain-example", "rain")], Guarding.RainWater(figures, home.HoleSurface, figures.Quantity("rain-example", "rain")));
    }

    private static IEnumerable<SheetRow> SideLines(GroundDesk desk, SheetFigure[] size)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var slope = Sides.Slope(figures, home.Soil, home.Wet);
        var back = slope is null || home.HoleDepth is null ? null : Quantity.Of(slope.Amount * home.HoleDepth.Base, "m");
        SheetFigure[] ground = [desk.Answer(GroundHome.SoilQuestion), desk.Answer(GroundHome.WetQuestion)];
        string[] soil = home.Soil is { } known ? [known.Row.Id, "slope-caution"] : ["slope-caution"];
        yield return desk.Line("sides", "sides", [GroundDesk.Worked("hole-depth", home.HoleDepth), .. ground], Option(Sides.For(figures, home.HoleDepth, home.Soil, home.Wet)), [.. Depths, .. soil]);
        yield return desk.Line("slope", "slope", ground, slope, soil);
        yield return desk.Limited("slope-back", "slope-depth", [GroundDesk.Worked("slope", slope), size[2]], back, desk.Answer("ground.footing-distance"), soil);
        yield return desk.Line("sloped-top", "sloped-top", [size[0], size[2], GroundDesk.Worked("slope", slope)], JointHole.Top(figures, home.HoleLength, home.HoleDepth, slope), soil);
        yield return desk.Line("sloped-volume", "prismoid", [.. size, GroundDesk.Worked("slope", slope)], JointHole.SlopedVolume(figures, home.HoleLength, home.HoleWidth, home.HoleDepth, slope), soil);
    }

    private static Value.Option? Option(SideAdvice advice) => advice switch
    {
        SideAdvice.LookAndKeepBack => new("look-and-keep-back"),
        SideAdvice.SlopeOrSupport => new("slope-or-support"),
        SideAdvice.NeverAlone => new("never-alone"),
        SideAdvice.FirmWithSupport => new("firm-with-support"),
        _ => null,
    };
}
