namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about a sub-main in armoured cable, clipped, its armour as protective conductor: once behind a fuse as big as the main one, once behind the largest that leaves the main one whole.</summary>
internal static class SubMainLines
{
    /// <summary>The family of fuse that fused switches are sold with; the electrician confirms it.</summary>
    public const string FuseFamily = "bs-88-3";

    public static IEnumerable<SheetRow> Of(SheetDesk desk) =>
        TailsLines.Need(desk) == SwitchFuse.NotNeeded ? [] : [.. Behind(desk, "same", desk.Supply.Fuse), .. Behind(desk, "selective", TailsLines.Selective(desk))];

    private static IEnumerable<SheetRow> Behind(SheetDesk desk, string which, Quantity? fuse)
    {
        var asked = Case(desk, fuse);
        var chosen = asked is null ? null : SubMain.Choose(desk.Figures, asked) ?? SubMain.ByCurrent(desk.Figures, asked);
        var fuseFigure = which == "same" ? desk.Answer(HomeSupply.FuseQuestion) : SheetDesk.Worked("selective-fuse", fuse);
        SheetFigure[] run = [fuseFigure, desk.Answer(HomeSupply.LengthQuestion), desk.Answer(HomeSupply.PhasesQuestion)];
        var supply = Supply(desk);
        var fuseRow = fuse is null ? [] : new[] { FaultLoops.Fuse(desk.Figures, FuseFamily, fuse)?.Id }.OfType<string>().ToArray();
        string[] cable = [.. Rows(desk, chosen, "rating"), .. Rows(desk, chosen, "drop")];
        string[] loop = [.. fuseRow, .. LoopRows(desk, chosen), "least-voltage-factor", "close-margin"];
        yield return desk.Line(
            which + "-size", "sub-main", [.. run, supply], SheetDesk.Worth(chosen?.Cable.Size), SheetDesk.Worked(which + "-size-needed", chosen?.Needed),
            chosen is null ? LimitVerdict.NotKnown : Limits.AtMost(desk.Figures, chosen.Needed, chosen.Rating), [.. cable, "close-margin"]);
        yield return desk.Line(
            which + "-drop", "voltage-drop", run, SheetDesk.Worth(chosen?.Drop), desk.Cell("drop-sub-main-habit", "share"),
            chosen?.DropVerdict ?? LimitVerdict.NotKnown, [.. Rows(desk, chosen, "drop"), "nominal-voltage", "close-margin"]);
        yield return desk.Line(which + "-left", "voltage-left", run, SheetDesk.Worth(chosen?.LeftForLighting), [.. Rows(desk, chosen, "drop"), "drop-limit-lighting"]);
        yield return desk.Line(
            which + "-loop", "loop", [.. run, supply], SheetDesk.Worth(chosen?.Loop?.Impedance), SheetDesk.Worked(which + "-loop-limit", chosen?.LoopLimit),
            chosen?.LoopVerdict ?? LimitVerdict.NotKnown, loop);
        yield return desk.Line(
            which + "-protective", "adiabatic", run, SheetDesk.Worth(chosen?.ProtectiveNeeded), SheetDesk.Worked(which + "-armour", chosen?.ProtectiveThere),
            chosen?.ProtectiveVerdict ?? LimitVerdict.NotKnown, [.. loop, "k-steel-armour"]);
        yield return desk.Line(which + "-longest", "longest-run", [.. run, supply], SheetDesk.Worth(chosen?.LongestRun), loop);
    }

    /// <summary>The supply's loop as an input, with how it came to us.</summary>
    public static SheetFigure Supply(SheetDesk desk) =>
        desk.Supply.ReadingStands ? desk.Answer(HomeSupply.ReadingQuestion, FigureOrigin.Measured)
        : desk.Supply.DeclaredRow is { } row ? desk.Cell(row, "loop", FigureOrigin.DeclaredMaximum)
        : desk.Supply.After == EarthingSystem.OwnRod ? desk.Answer(HomeSupply.AfterQuestion)
        : new(HomeSupply.AfterQuestion, null, FigureOrigin.Answered);

    private static SubMainCase? Case(SheetDesk desk, Quantity? fuse) => (fuse, desk.Supply) is ({ } amps, { TailsLength: { } length, Phases: { } phases } supply)
        ? new(CableFamily.Armoured70, LayingMethod.C, phases, amps, FuseFamily, amps, length, new ProtectiveConductor.Armour(Cores(phases)), supply.Loop(desk.Figures), [])
        : null;

    // Armour round four cores is bigger than round three, so the figures for three are the cautious ones.
    private static int Cores(Phases phases) => phases == Phases.One ? 2 : 3;

    private static IEnumerable<string> Rows(SheetDesk desk, SubMainSize? chosen, string kind) => chosen?.Cable.OfThisSize(desk.Figures, kind).Select(r => r.Id) ?? [];

    private static IEnumerable<string> LoopRows(SheetDesk desk, SubMainSize? chosen) => chosen is null || desk.Supply.Phases is not { } phases ? [] : new[]
    {
        Conductors.OfSize(desk.Figures, "conductor-", chosen.Cable.Size)?.Id,
        Conductors.OfSize(desk.Figures, Invariant($"armour-resistance-{Cores(phases)}-"), chosen.Cable.Size)?.Id,
        Conductors.OfSize(desk.Figures, Invariant($"armour-area-{Cores(phases)}-"), chosen.Cable.Size)?.Id,
        Invariant($"warm-copper-{chosen.Cable.Temperature}"),
        Invariant($"warm-armour-{chosen.Cable.Temperature}"),
    }.OfType<string>();
}
