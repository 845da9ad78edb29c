namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about a sub-main in armoured cable, clipped, its armour as protective conductor: once behind a fuse as big as the main one, once behind the largest that leaves the main one whole.</summary>
internal static class SubMainLines
{
    /// <summary>The family of fuse that fused switches are sold with; the electrician confirms it.</summary>
    public const string FuseFamily = "bs-88-3";

    public static IEnumerable<SheetRow> Of(SheetDesk desk) =>
        TailsLines.Need(desk) == SwitchFuse.NotNeeded ? [] : [.. Behind(desk, "same", desk.Supply.Fuse), .. SubMainOthers.Of(desk), .. Behind(desk, "selective", TailsLines.Selective(desk))];

    private static IEnumerable<SheetRow> Behind(SheetDesk desk, string which, Quantity? fuse)
    {
        var asked = Case(desk, fuse, CableFamily.Armoured70, LayingMethod.C);
        var chosen = asked is null ? null : SubMain.Choose(desk.Figures, asked) ?? SubMain.ByCurrent(desk.Figures, asked);
        var fuseFigure = which == "same" ? desk.Answer(HomeSupply.FuseQuestion) : SheetDesk.Worked("selective-fuse", fuse);
        SheetFigure[] run = [fuseFigure, desk.Answer(HomeSupply.LengthQuestion), desk.Answer(HomeSupply.PhasesQuestion)];
        var supply = Supply(desk);
        string[] cable = [.. Rows(desk, chosen, "rating"), .. Rows(desk, chosen, "drop")];
        string[] loop = [.. LoopRows(desk, asked, chosen), "close-margin"];
        yield return desk.Line(which + "-size", "sub-main", [.. run, supply], Size(desk, asked, chosen), cable);
        yield return Carries(desk, which, run, chosen);
        yield return desk.Line(
            which + "-drop", "voltage-drop", [.. run, desk.Cell("drop-sub-main-habit", "share")], SheetDesk.Worth(chosen?.Drop), SheetDesk.Worked("drop-allowed", asked is null ? null : SubMain.Allowed(desk.Figures, asked)),
            chosen?.DropVerdict ?? LimitVerdict.NotKnown, [.. Rows(desk, chosen, "drop"), "nominal-voltage", "close-margin"]);
        yield return desk.Line(which + "-left", "voltage-left", run, SheetDesk.Worth(chosen?.LeftForLighting), [.. Rows(desk, chosen, "drop"), "drop-limit-lighting"]);
        yield return desk.Line(
            which + "-loop", "loop", [.. run, supply], SheetDesk.Worth(chosen?.Loop?.Impedance), SheetDesk.Worked("loop-limit", chosen?.LoopLimit), Shown(chosen), loop);
        yield return desk.Line(
            which + "-protective", "adiabatic", run, SheetDesk.Worth(chosen?.ProtectiveNeeded), SheetDesk.Worked("protective-there", chosen?.ProtectiveThere), chosen?.ProtectiveVerdict ?? LimitVerdict.NotKnown, loop);
        yield return desk.Line(which + "-longest-drop", "longest-by-drop", run, SheetDesk.Worth(chosen?.LongestByDrop), [.. Rows(desk, chosen, "drop"), "drop-sub-main-habit", "nominal-voltage"]);
        yield return desk.Line(which + "-longest", "longest-run", [.. run, supply], Longest(chosen), loop);
    }

    /// <summary>The supply's loop as an input, with how it came to us.</summary>
    public static SheetFigure Supply(SheetDesk desk) =>
        desk.Supply.ReadingStands ? desk.Answer(HomeSupply.ReadingQuestion, FigureOrigin.Measured)
        : desk.Supply.DeclaredRow is { } row ? desk.Cell(row, "loop", FigureOrigin.DeclaredMaximum)
        : desk.Supply.After == EarthingSystem.OwnRod ? desk.Answer(HomeSupply.AfterQuestion)
        : new(HomeSupply.AfterQuestion, null, FigureOrigin.Answered);

    /// <summary>What a sub-main in such a cable is asked to do, its own earth as protective conductor; null while fuse, length or phases are not known.</summary>
    public static SubMainCase? Case(SheetDesk desk, Quantity? fuse, CableFamily family, LayingMethod method) => (fuse, desk.Supply) is ({ } amps, { TailsLength: { } length, Phases: { } phases } supply)
        ? new(family, method, phases, amps, FuseFamily, amps, length, Protective(family, phases), supply.Loop(desk.Figures), [])
        : null;

    /// <summary>The size that came out, that no size of the tables does, or null while nobody can say, as where the tables are lacking.</summary>
    public static Value? Size(SheetDesk desk, SubMainCase? asked, SubMainSize? chosen) => chosen is not null ? SheetDesk.Worth(chosen.Cable.Size)
        : asked is null || Cable.Sizes(desk.Figures, asked.Family).IsEmpty ? null
        : new Value.Option("no-size");

    /// <summary>The line that holds the current that the cable must carry against what that size carries, laid so.</summary>
    public static SheetRow Carries(SheetDesk desk, string which, SheetFigure[] run, SubMainSize? chosen) => desk.Line(
        which + "-carries", "carries", run, SheetDesk.Worth(chosen?.Needed), SheetDesk.Worked("size-rating", chosen?.Rating), Limits.AtMost(desk.Figures, chosen?.Needed, chosen?.Rating), [.. Rows(desk, chosen, "rating"), "close-margin"]);

    // A declared greatest value proves nothing of this home, neither way: only a reading tells.
    private static LimitVerdict Shown(SubMainSize? chosen) => chosen?.Loop is EarthLoop.Measured ? chosen.LoopVerdict : LimitVerdict.NotKnown;

    /// <summary>The longest run, that no length does, or null while nobody can say.</summary>
    public static Value? Longest(SubMainSize? chosen) => chosen?.LongestRun is { Base: <= 0 } ? new Value.Option(chosen.Loop is EarthLoop.Measured ? "no-length" : "no-length-declared") : SheetDesk.Worth(chosen?.LongestRun);

    /// <summary>The rows of that kind about the chosen cable.</summary>
    public static IEnumerable<string> Rows(SheetDesk desk, SubMainSize? chosen, string kind) => chosen?.Cable.OfThisSize(desk.Figures, kind).Select(r => r.Id) ?? [];

    /// <summary>The rows that loop and heat of the chosen cable rest on.</summary>
    public static IEnumerable<string> LoopRows(SheetDesk desk, SubMainCase? asked, SubMainSize? chosen)
    {
        var fuse = asked is null ? null : FaultLoops.Fuse(desk.Figures, FuseFamily, asked.Fuse)?.Id;
        if (asked is null || chosen is null)
        {
            return fuse is null ? ["least-voltage-factor"] : [fuse, "least-voltage-factor"];
        }

        var (cable, k) = (chosen.Cable, asked.Protective.Heated(desk.Figures, chosen.Cable).Row);
        string? OfSize(string rows) => Conductors.OfSize(desk.Figures, rows, cable.Size)?.Id;
        string?[] protective = asked.Protective is ProtectiveConductor.Armour { Cores: var cores }
            ? [OfSize(Invariant($"armour-resistance-{cores}-")), OfSize(Invariant($"armour-area-{cores}-")), Invariant($"warm-armour-{cable.Temperature}")]
            : [OfSize("core-flat-")];
        return [.. protective.Append(fuse).Append(OfSize("conductor-")).OfType<string>(), Invariant($"warm-copper-{cable.Temperature}"), "least-voltage-factor", k];
    }

    // Armour round four cores is bigger than round three, so the figures for three are the cautious ones.
    private static ProtectiveConductor Protective(CableFamily family, Phases phases) =>
        family == CableFamily.FlatTwinAndEarth ? new ProtectiveConductor.InFlatCable() : new ProtectiveConductor.Armour(phases == Phases.One ? 2 : 3);
}
