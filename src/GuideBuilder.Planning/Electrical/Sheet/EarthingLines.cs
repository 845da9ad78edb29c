namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about earthing, bonding and a rod.</summary>
internal static class EarthingLines
{
    private const string Tails = "tails-size-usual";
    private const string Neutral = "supply-neutral-usual";

    public static IEnumerable<SheetRow> Of(SheetDesk desk)
    {
        var after = desk.Answer(HomeSupply.AfterQuestion);
        var earthing = desk.Figures.Quantity(Tails, "size") is { } tails ? ProtectiveSizes.Earthing(desk.Figures, desk.Supply.After, tails) : null;
        var bonding = earthing is not null && desk.Figures.Quantity(Neutral, "size") is { } neutral
            ? ProtectiveSizes.Bonding(desk.Figures, desk.Supply.After, neutral, earthing)
            : null;
        yield return desk.Line("earthing-conductor", "table-54-7", [after, desk.Cell(Tails, "size")], SheetDesk.Worth(earthing), "protective-size", "operator-least-earth");
        yield return desk.Line(
            "main-bonding", "bonding", [after, desk.Cell(Neutral, "size", FigureOrigin.Assumed)], SheetDesk.Worth(bonding), "bonding-separate", "bonding-combined-1", "bond-at-gas");
        yield return Heat(desk, earthing);
        if (desk.Supply.After is EarthingSystem.Combined or EarthingSystem.NotKnown)
        {
            yield return ArmourAsBond(desk, after, bonding);
        }

        yield return Declared(desk, "declared-most-premises-2018");
        yield return Declared(desk, "declared-nearly-all-2018");
        foreach (var row in desk.Supply.After == EarthingSystem.OwnRod ? RodLines(desk, after) : [])
        {
            yield return row;
        }
    }

    private static SheetRow Heat(SheetDesk desk, Quantity? earthing)
    {
        var limit = desk.Supply.Fuse is { } fuse ? FaultLoops.GreatestForFuse(desk.Figures, SubMainLines.FuseFamily, fuse) : null;
        var least = limit is not null && Adiabatic.K(desk.Figures, "k-copper-separate", 70) is { } k ? Adiabatic.BehindFuse(desk.Figures, limit, k) : null;
        return desk.Line(
            "earthing-heat", "adiabatic", [desk.Answer(HomeSupply.FuseQuestion)], SheetDesk.Worth(least), SheetDesk.Worked("earthing-conductor", earthing),
            Limits.AtMost(desk.Figures, least, earthing), "k-copper-separate", "least-voltage-factor", "close-margin");
    }

    private static SheetRow ArmourAsBond(SheetDesk desk, SheetFigure after, Quantity? bonding)
    {
        var needed = bonding is null ? null : Conductors.ArmourEqualTo(desk.Figures, bonding);
        var most = desk.Figures.Group("armour-area-2-").MaxBy(r => r.In("area", "mm²") ?? 0);
        return desk.Line(
            "armour-as-bond", "armour-as-bond", [after, SheetDesk.Worked("main-bonding", bonding)], SheetDesk.Worth(needed), most is null ? null : desk.Cell(most.Id, "area"),
            Limits.AtMost(desk.Figures, needed, most?.Find("area")), "resistivity-steel-armour", "resistivity-copper", "close-margin");
    }

    // What is declared for premises in general, beside what the fuse allows: it proves nothing of this home, neither way.
    private static SheetRow Declared(SheetDesk desk, string row)
    {
        var limit = desk.Supply.Fuse is { } fuse ? FaultLoops.GreatestForFuse(desk.Figures, SubMainLines.FuseFamily, fuse) : null;
        var loop = desk.Supply.After is EarthingSystem.Combined or EarthingSystem.Separate && desk.Figures.Quantity(row, "loop") is { } declared ? new EarthLoop.DeclaredMaximum(declared) : null;
        return desk.Line(
            row, "declared", [desk.Cell(row, "loop", FigureOrigin.DeclaredMaximum), desk.Answer(HomeSupply.AfterQuestion), desk.Answer(HomeSupply.FuseQuestion)],
            SheetDesk.Worth(loop?.Impedance), SheetDesk.Worked("declared-limit", limit), LimitVerdict.NotKnown, "close-margin");
    }

    private static IEnumerable<SheetRow> RodLines(SheetDesk desk, SheetFigure after)
    {
        var reading = desk.Supply.ReadingStands ? desk.Figures.Ohms(desk.Supply.Reading).Of("Ω") : null;
        var steady = desk.Figures.Quantity("electrode-steady", "resistance");
        yield return desk.Line(
            "rod-reading", "rod-steady", [after, reading is null ? new(HomeSupply.ReadingQuestion, null, FigureOrigin.Measured) : desk.Answer(HomeSupply.ReadingQuestion, FigureOrigin.Measured)],
            SheetDesk.Worth(reading), desk.Cell("electrode-steady", "resistance"), Limits.AtMost(desk.Figures, reading, steady), "close-margin");
        foreach (var device in new[] { "residual-current-30", "residual-current-100" })
        {
            var greatest = desk.Figures.Quantity(device, "current") is { } current ? Rod.GreatestResistance(desk.Figures, current) : null;
            yield return desk.Line(device, "residual-current", [desk.Cell(device, "current")], SheetDesk.Worth(greatest), "touch-limit");
        }

        var (soil, length, across) = (desk.Figures.Number("typical-soil", "resistivity"), desk.Figures.Quantity("rod-usual", "length"), desk.Figures.Quantity("rod-usual", "diameter"));
        var expected = soil is { } rho && length is not null && across is not null ? Rod.Resistance(desk.Figures, rho, length, across) : null;
        yield return desk.Line("rod-expected", "rod", [desk.Cell("typical-soil", "resistivity", FigureOrigin.Assumed), desk.Cell("rod-usual", "length", FigureOrigin.Assumed)], SheetDesk.Worth(expected));
    }
}
