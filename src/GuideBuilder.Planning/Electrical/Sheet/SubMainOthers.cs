namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about other cables, laid in other ways, for the sub-main behind a fuse as big as the main one: the least size of each, what its protective conductor needs while a fault lasts, and the longest run.</summary>
internal static class SubMainOthers
{
    private static readonly ImmutableArray<(string Id, CableFamily Family, LayingMethod Method)> Choices =
    [
        ("buried", CableFamily.Armoured70, LayingMethod.D),
        ("hot-clipped", CableFamily.Armoured90, LayingMethod.C),
        ("hot-buried", CableFamily.Armoured90, LayingMethod.D),
        ("flat-clipped", CableFamily.FlatTwinAndEarth, LayingMethod.C),
        ("flat-in-insulated-wall", CableFamily.FlatTwinAndEarth, LayingMethod.A),
    ];

    public static IEnumerable<SheetRow> Of(SheetDesk desk) => from choice in Choices
                                                              where choice.Family != CableFamily.FlatTwinAndEarth || desk.Supply.Phases != Phases.Three
                                                              from row in Lines(desk, choice.Id, SubMainLines.Case(desk, desk.Supply.Fuse, choice.Family, choice.Method))
                                                              select row;

    private static IEnumerable<SheetRow> Lines(SheetDesk desk, string id, SubMainCase? asked)
    {
        var chosen = asked is null ? null : SubMain.Choose(desk.Figures, asked) ?? SubMain.ByCurrent(desk.Figures, asked);
        SheetFigure[] run = [desk.Answer(HomeSupply.FuseQuestion), desk.Answer(HomeSupply.LengthQuestion), desk.Answer(HomeSupply.PhasesQuestion), SubMainLines.Supply(desk)];
        string[] rows = [.. SubMainLines.Rows(desk, chosen, "rating"), .. SubMainLines.Rows(desk, chosen, "drop"), .. SubMainLines.LoopRows(desk, asked, chosen), "close-margin"];
        yield return desk.Line($"other-{id}-size", "sub-main", run, SubMainLines.Size(desk, asked, chosen), rows);
        if (asked is not null && chosen is null)
        {
            yield break;
        }

        yield return SubMainLines.Carries(desk, $"other-{id}", run, chosen);
        yield return desk.Line(
            $"other-{id}-protective", "adiabatic", run, SheetDesk.Worth(chosen?.ProtectiveNeeded), SheetDesk.Worked("protective-there", chosen?.ProtectiveThere), chosen?.ProtectiveVerdict ?? LimitVerdict.NotKnown, rows);
        yield return desk.Line($"other-{id}-longest-drop", "longest-by-drop", run, SheetDesk.Worth(chosen?.LongestByDrop), rows);
        yield return desk.Line($"other-{id}-longest", "longest-run", run, SubMainLines.Longest(chosen), rows);
    }
}
