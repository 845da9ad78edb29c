namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about the tails and the fused switch.</summary>
internal static class TailsLines
{
    private const string Usual = "tails-size-usual";

    public static IEnumerable<SheetRow> Of(SheetDesk desk)
    {
        var need = Need(desk);
        var limit = desk.Supply.TailsLimit is null ? desk.Cell("tails-limit-usual", "length") : desk.Answer(HomeSupply.LimitQuestion);
        yield return desk.Line(
            "switch-fuse", "tails-length", [desk.Answer(HomeSupply.LengthQuestion)], ElectricalFacts.Option(need), limit,
            Verdict(need), "tails-limit-usual", "close-margin");
        yield return desk.Line("whole-run", "tails-length", [desk.Answer(HomeSupply.LengthQuestion), limit], Run(need), "tails-limit-usual");
        yield return Carry(desk, "tails-clipped", LayingMethod.C);
        yield return Carry(desk, "tails-in-insulated-wall", LayingMethod.A);
        yield return Drop(desk);
        yield return desk.Line(
            "selective-fuse", "selectivity", [desk.Answer(HomeSupply.FuseQuestion), desk.Cell("selectivity", "ratio")], Selects(desk));
        yield return SelectiveDemand(desk);
    }

    /// <summary>Whether a fused switch is needed, with the operator's own limit where there is one.</summary>
    public static SwitchFuse Need(SheetDesk desk) => Tails.Need(desk.Figures, desk.Supply.TailsLength, desk.Supply.TailsLimit);

    /// <summary>The largest fuse that leaves the main one whole.</summary>
    public static Quantity? Selective(SheetDesk desk) => desk.Supply.Fuse is { } fuse ? Selectivity.LargestUnder(desk.Figures, fuse, SubMainLines.FuseFamily) : null;

    private static Value? Selects(SheetDesk desk) => desk.Supply.Fuse is null || desk.Figures.Row("selectivity") is null ? null : SheetDesk.Worth(Selective(desk)) ?? new Value.Option("no-fuse");

    // The fuse that leaves the main one whole must still carry what the home draws.
    private static SheetRow SelectiveDemand(SheetDesk desk)
    {
        var (demand, fuse) = (HomeLoads.Demand(desk.Figures, desk.Inputs)?.Demand.Highest, Selective(desk));
        return desk.Line("selective-demand", "demand-against-fuse", [SheetDesk.Worked("demand", demand)], SheetDesk.Worth(demand), SheetDesk.Worked("selective-fuse", fuse), Limits.AtMost(desk.Figures, demand, fuse), "close-margin");
    }

    private static SheetRow Carry(SheetDesk desk, string id, LayingMethod method)
    {
        var rating = Cable(desk) is { } cable && desk.Supply.Phases is { } phases ? cable.Rating(desk.Figures, method, phases) : null;
        return desk.Line(
            id, "carries", [desk.Cell(Usual, "size"), desk.Answer(HomeSupply.FuseQuestion), desk.Answer(HomeSupply.PhasesQuestion)], SheetDesk.Worth(desk.Figures.Amps(desk.Supply.Fuse).Of("A")), SheetDesk.Worked(id, rating),
            Limits.AtMost(desk.Figures, desk.Figures.Amps(desk.Supply.Fuse).Of("A"), rating), [.. Rows(desk, "rating"), "close-margin"]);
    }

    private static SheetRow Drop(SheetDesk desk)
    {
        var phases = desk.Supply.Phases;
        var perMetre = phases is { } p ? Cable(desk)?.Drop(desk.Figures, p) : null;
        var run = Length(desk);
        var drop = perMetre is not null && desk.Supply.Fuse is { } fuse && run.Metres is { } length ? VoltageDrop.Of(desk.Figures, perMetre, fuse, length) : null;
        var limit = phases is { } q ? VoltageDrop.Limit(desk.Figures, lighting: true, q) : null;
        return desk.Line(
            "tails-drop", "voltage-drop", [desk.Cell(Usual, "size"), desk.Answer(HomeSupply.FuseQuestion), run.Figure, desk.Answer(HomeSupply.PhasesQuestion)],
            SheetDesk.Worth(drop), SheetDesk.Worked("drop-limit-lighting", limit), Limits.AtMost(desk.Figures, drop, limit), [.. Rows(desk, "drop"), "nominal-voltage", "close-margin"]);
    }

    // Where the whole run is too long for tails, only the part up to the fused switch is: no more than the limit.
    private static (Quantity? Metres, SheetFigure Figure) Length(SheetDesk desk) => Need(desk) != SwitchFuse.Needed
        ? (desk.Supply.TailsLength, desk.Answer(HomeSupply.LengthQuestion))
        : desk.Supply.TailsLimit is { } limit ? (limit, desk.Answer(HomeSupply.LimitQuestion)) : (Tails.Usual(desk.Figures), desk.Cell("tails-limit-usual", "length"));

    private static Value.Option? Run(SwitchFuse need) => need switch
    {
        SwitchFuse.NotNeeded => new("run-tails"),
        SwitchFuse.Ask => new("run-ask"),
        SwitchFuse.Needed => new("run-sub-main"),
        _ => null,
    };

    private static Cable? Cable(SheetDesk desk) => desk.Figures.Quantity(Usual, "size") is { } size ? new(CableFamily.Tails, size) : null;

    private static IEnumerable<string> Rows(SheetDesk desk, string kind) => Cable(desk)?.OfThisSize(desk.Figures, kind).Select(r => r.Id) ?? [];

    private static LimitVerdict Verdict(SwitchFuse need) => need switch
    {
        SwitchFuse.NotNeeded => LimitVerdict.Within,
        SwitchFuse.Ask => LimitVerdict.TooCloseToCall,
        SwitchFuse.Needed => LimitVerdict.Over,
        _ => LimitVerdict.NotKnown,
    };
}
