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
            "footing-line", "45-degrees", [GroundDesk.Worked("hole-depth", home.HoleDepth)], Clearances.FromFooting(figures, home.HoleDepth, Quantity.Of(0, "m")), desk.Answer(GroundHome.RoomQuestion), "footing-line");
        yield return desk.Line("barrier", "barrier", size[..2], Guarding.Barrier(figures, home.HoleLength, home.HoleWidth), "barrier");
        if (home.HoleDepth?.Base >= figures.In("ladder", "depth", "m"))
        {
            yield return desk.Line("ladder", "ladder", [GroundDesk.Worked("hole-depth", home.HoleDepth), desk.Cell("ladder", "depth")], new Value.Option("ladder"));
        }

        yield return desk.Line("rain", "rain", [.. size[..2], desk.Cell("rain-example", "rain")], Litres(Guarding.RainWater(figures, home.HoleSurface, figures.Quantity("rain-example", "rain"))));
    }

    private static IEnumerable<SheetRow> SideLines(GroundDesk desk, SheetFigure[] size)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var advice = Sides.For(figures, home.HoleDepth, home.Soil, home.Wet);
        SheetFigure[] ground = [desk.Answer(GroundHome.SoilQuestion), desk.Answer(GroundHome.WetQuestion)];
        string[] soil = home.Soil is { } known ? [known.Row.Id, "slope-caution"] : ["slope-caution"];
        yield return desk.Line("sides", "sides", [size[2], .. ground], Option(advice), [.. Depths, .. soil]);
        yield return desk.Line("hole-case", "hole-case", [size[2], .. ground], Case(advice), Depths);
        foreach (var row in SlopedLines(desk, size, ground, soil))
        {
            yield return row;
        }
    }

    // What the hole would come to with sides that slope, so that nobody takes the room or the work of the one for that of the other.
    private static IEnumerable<SheetRow> SlopedLines(GroundDesk desk, SheetFigure[] size, SheetFigure[] ground, string[] soil)
    {
        var (home, figures) = (desk.Home, desk.Figures);
        var slope = Sides.Slope(figures, home.Soil, home.Wet);
        var back = slope is null || home.HoleDepth is null ? null : Quantity.Of(slope.Amount * home.HoleDepth.Base, "m");
        var (length, width) = (JointHole.Top(figures, home.HoleLength, home.HoleDepth, slope), JointHole.Top(figures, home.HoleWidth, home.HoleDepth, slope));
        var volume = JointHole.SlopedVolume(figures, home.HoleLength, home.HoleWidth, home.HoleDepth, slope);
        SheetFigure[] sloped = [.. size, GroundDesk.Worked("slope", slope)];
        yield return desk.Line("slope", "slope", ground, slope, soil);
        yield return desk.Limited("slope-back", "slope-depth", [sloped[3], size[2]], back, desk.Answer(GroundHome.RoomQuestion), soil);
        yield return desk.Line("sloped-length", "sloped-top", [size[0], size[2], sloped[3]], length, soil);
        yield return desk.Line("sloped-width", "sloped-top", [size[1], size[2], sloped[3]], width, soil);
        yield return desk.Line("sloped-volume", "prismoid", sloped, volume, soil);
        yield return desk.Line("sloped-barrows", "volume-or-mass", [GroundDesk.Worked("sloped-volume", volume), GroundDesk.Worked("hole-volume", home.HoleVolume)], Barrows(home, volume), [.. soil, "barrow"]);
        yield return desk.Line("sloped-barrier", "barrier", [GroundDesk.Worked("sloped-length", length), GroundDesk.Worked("sloped-width", width)], Guarding.Barrier(figures, length, width), "barrier");
    }

    // The soil that a sloped hole adds comes from below the surface and its bed.
    private static Quantity? Barrows(GroundHome home, Quantity? sloped)
    {
        if (home is not { Soil: { } soil, Loose: { } loose, Mass: { } mass, HoleVolume: { } upright } || sloped is null)
        {
            return null;
        }

        var more = new Layer(soil, Quantity.Of(Math.Max(0, sloped.Base - upright.Base), "m³"));
        return Containers.Barrows(home.Figures, ((decimal?)loose.Base + Spoil.Loose(home.Figures, more)?.Base).Of("m³"), ((decimal?)mass.Base + Spoil.Mass(home.Figures, more)?.Base).Of("kg"));
    }

    // A cubic metre of water is a thousand litres.
    private static Quantity? Litres(Quantity? water) => water is null ? null : Quantity.Number(water.Base * 1000);

    // Every figure of the sheet counts a hole with upright sides: from the depth at which they must be held up, with support.
    private static Value.Option? Case(SideAdvice advice) => advice switch
    {
        SideAdvice.LookAndKeepBack => new("case-upright"),
        SideAdvice.SlopeOrSupport or SideAdvice.NeverAlone => new("case-supported"),
        SideAdvice.FirmWithSupport => new("case-by-firm"),
        _ => null,
    };

    private static Value.Option? Option(SideAdvice advice) => advice switch
    {
        SideAdvice.LookAndKeepBack => new("look-and-keep-back"),
        SideAdvice.SlopeOrSupport => new("slope-or-support"),
        SideAdvice.NeverAlone => new("never-alone"),
        SideAdvice.FirmWithSupport => new("firm-with-support"),
        _ => null,
    };
}
