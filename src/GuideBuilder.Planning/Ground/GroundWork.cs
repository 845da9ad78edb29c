namespace GuideBuilder.Planning.Ground;

/// <summary>Hours of work for the hole and the trench of a home, with who does it and how much care it takes.</summary>
internal static class GroundWork
{
    /// <summary>Hours of digging, the hole and the trench.</summary>
    public static Quantity? DigHours(GroundHome home, string personCell = "factor") => GroundHome.IsNothing(home.Dug)
        ? Quantity.Of(0, "hours")
        : (HoleHours(home, personCell)?.Base + TrenchHours(home, personCell)?.Base).Of("hours");

    /// <summary>Hours of digging the whole hole with the care of a cable that may be at any depth, layer by layer, and of breaking up what covers it, cut outside the strip and lifted by hand; times the person, roots, rubble and water.</summary>
    public static Quantity? HoleHours(GroundHome home, string personCell = "factor") =>
        Part(home, home.HoleVolume, home.HoleCut, Dig.Pit, home.HoleDepth, home.HoleSurface, [home.Figures.Quantity("care-cable", "factor"), Person(home, GroundHome.DigsQuestion, personCell), .. Care(home)]);

    /// <summary>Hours of digging the trench and breaking up what covers it; times the person, roots, rubble and water.</summary>
    public static Quantity? TrenchHours(GroundHome home, string personCell = "factor") =>
        Part(home, home.TrenchVolume, home.TrenchCut, Dig.Trench, home.TrenchDepth, home.TrenchSurface, [Person(home, GroundHome.DigsQuestion, personCell), .. Care(home)]);

    /// <summary>Hours of barrowing all that comes out to a heap near by, by whoever digs.</summary>
    public static Quantity? BarrowHours(GroundHome home) =>
        Labour.Times(home.Figures, Labour.BarrowHours(home.Figures, home.Loose, home.Figures.Quantity("barrow-near", "up-to")), Person(home, GroundHome.DigsQuestion, "factor"));

    /// <summary>Hours of filling everything again, sand and soil, in thin layers by hand.</summary>
    public static Quantity? FillHours(GroundHome home, string personCell = "factor") => GroundHome.IsNothing(home.Dug)
        ? Quantity.Of(0, "hours")
        : Labour.Times(home.Figures, Labour.FillHours(home.Figures, home.Dug, home.Soil), Person(home, GroundHome.FillsQuestion, personCell));

    /// <summary>The row of the person who does it: household, or practised.</summary>
    public static string PersonRow(GroundHome home, string question) => home.Inputs.Option(question) == "household" ? "person-household" : "person-practised";

    private static Quantity? Part(GroundHome home, Quantity? volume, Cut? cut, Dig what, Quantity? depth, Quantity? area, IEnumerable<Quantity?> factors)
    {
        if (GroundHome.IsNothing(volume))
        {
            return Quantity.Of(0, "hours");
        }

        if (cut is null || home.Soil is null)
        {
            return null;
        }

        var hours = new[] { cut.Bed, cut.Below }.OfType<Layer>().Where(l => l.Volume.Base > 0).Select(l => Labour.DigHours(home.Figures, l.Volume, l.Soil, what, depth)?.Base).Total();
        return Labour.Times(home.Figures, (hours + home.Surface?.BreakHours(home.Figures, area)?.Base).Of("hours"), factors);
    }

    private static Quantity? Person(GroundHome home, string question, string cell) =>
        home.Inputs.Lookup(question).Standing == Standing.Unknown ? null : home.Figures.Quantity(PersonRow(home, question), cell);

    private static IEnumerable<Quantity?> Care(GroundHome home)
    {
        yield return home.Soil?.Row.Find("care") ?? Quantity.Number(1);
        yield return home.Inputs.IsYes(GroundHome.TreesQuestion) ? home.Figures.Quantity("care-roots", "factor") : Quantity.Number(1);
        yield return home.Wet == true ? home.Figures.Quantity("care-wet", "factor") : Quantity.Number(1);
    }
}
