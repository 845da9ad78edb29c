namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about what the home draws.</summary>
internal static class DemandLines
{
    private static readonly ImmutableArray<string> Shares = ["share", "first", "share-above", "largest", "second", "others"];

    public static IEnumerable<SheetRow> Of(SheetDesk desk)
    {
        var home = HomeLoads.Of(desk.Figures, desk.Inputs);
        var found = HomeLoads.Demand(desk.Figures, desk.Inputs);
        var demand = found?.Demand.Highest;
        string[] rules = [.. home.Select(l => l.Load?.Kind).OfType<LoadKind>().Distinct().Select(Rule), "nominal-voltage", "close-margin"];
        yield return desk.Line(
            "demand", "diversity", home.Select(Figure).Append(desk.Answer(HomeSupply.PhasesQuestion)), SheetDesk.Worth(demand), desk.Answer(HomeSupply.FuseQuestion), AgainstFuse(desk, demand), rules);
        if (found is null)
        {
            yield return SoFar(desk, home, rules);
        }

        foreach (var row in desk.Supply.Phases == Phases.Three ? ByLine(desk, home, found) : ByKind(desk, home))
        {
            yield return row;
        }

        yield return desk.Line("demand-power", "apparent", [SheetDesk.Worked("demand", demand)], SheetDesk.Worth(Apparent(desk, found?.Demand)), "nominal-voltage");
        yield return desk.Line(
            "notice", "notice", [SheetDesk.Worked("demand", demand), desk.Answer(HomeSupply.FuseQuestion), desk.Answer(HomeSupply.LoopedQuestion), new("notice-days", SheetDesk.Worth(desk.Figures.Quantity("notify-threshold", "tell-within")), FigureOrigin.Table)],
            Option(Notice(desk, demand)), desk.Cell("notify-threshold", "apply-above"), Limits.AtMost(desk.Figures, demand, desk.Figures.Quantity("notify-threshold", "apply-above")), "close-margin");
    }

    // What is known already: it can be over, and never within.
    private static SheetRow SoFar(SheetDesk desk, ImmutableArray<HomeLoad> home, string[] rules)
    {
        var loads = home.Select(l => l.Load).OfType<Load>().ToImmutableArray();
        var placed = desk.Supply.Phases == Phases.Three ? LineBalance.Allocate(desk.Figures, loads) : loads;
        var demand = desk.Supply.Phases is null || loads.IsEmpty || placed is null ? null : MaximumDemand.Of(desk.Figures, placed)?.Highest;
        return desk.Line(
            "demand-so-far", "diversity", home.Where(l => l.Load is not null).Select(Figure).Append(desk.Answer(HomeSupply.PhasesQuestion)), SheetDesk.Worth(demand), desk.Answer(HomeSupply.FuseQuestion),
            AgainstFuse(desk, demand) == LimitVerdict.Over ? LimitVerdict.Over : LimitVerdict.NotKnown, rules);
    }

    // What each kind counts for where all stands on one line: their sum is the demand.
    private static IEnumerable<SheetRow> ByKind(SheetDesk desk, ImmutableArray<HomeLoad> home) =>
        from loads in home.Where(l => l.Load is not null).GroupBy(l => l.Load!.Kind)
        let rule = Rule(loads.Key)
        select desk.Line(
            "counts-" + Diversity.Id(loads.Key), "counts", loads.Select(Figure).Concat(ShareFigures(desk, rule)),
            SheetDesk.Worth(Diversity.Allowance(desk.Figures, Premises.Household, loads.Key, loads.Select(l => l.Load!))), rule);

    private static IEnumerable<SheetFigure> ShareFigures(SheetDesk desk, string rule) =>
        from cell in Shares
        let quantity = desk.Figures.Quantity(rule, cell)
        where quantity is not null
        select new SheetFigure("diversity-" + cell, SheetDesk.Worth(quantity), FigureOrigin.Table);

    // Which load stands on which line, so that the electrician can follow the sharing out.
    private static IEnumerable<SheetRow> ByLine(SheetDesk desk, ImmutableArray<HomeLoad> home, (MaximumDemand Demand, ImmutableArray<Load> Loads)? found)
    {
        (string Id, Line Line, Quantity? Demand)[] lines = [("demand-first", Line.First, found?.Demand.First), ("demand-second", Line.Second, found?.Demand.Second), ("demand-third", Line.Third, found?.Demand.Third)];
        return from line in lines
               let there = found is null ? [] : home.Where(h => found.Value.Loads.Any(l => l.Name == h.Name && (l.Line == line.Line || l.Line == Line.All))).ToArray()
               select desk.Line(
                   line.Id, "balance", there.Select(Figure), SheetDesk.Worth(line.Demand), desk.Answer(HomeSupply.FuseQuestion), AgainstFuse(desk, line.Demand),
                   [.. there.Select(l => Rule(l.Load!.Kind)).Distinct(), "close-margin"]);
    }

    private static SheetFigure Figure(HomeLoad load) => new(load.Name, SheetDesk.Worth(load.Load?.Current), load.Origin);

    private static string Rule(LoadKind kind) => "diversity-household-" + Diversity.Id(kind);

    private static LimitVerdict AgainstFuse(SheetDesk desk, Quantity? demand) => Limits.AtMost(desk.Figures, demand, desk.Figures.Amps(desk.Supply.Fuse).Of("A"));

    private static Quantity? Apparent(SheetDesk desk, MaximumDemand? demand) => demand is null ? null
        : desk.Supply.Phases == Phases.One ? Power.Apparent(desk.Figures, demand.Highest)
        : new[] { demand.First, demand.Second, demand.Third }.Select(line => Power.Apparent(desk.Figures, line)?.Amount).Total().Of("kVA");

    /// <summary>The notice to the operator; a warning sign at the intake counts as worry.</summary>
    public static OperatorNotice Notice(SheetDesk desk, Quantity? demand)
    {
        bool? worry = desk.Inputs.Lookup("intake.signs").Standing == Standing.Known ? !desk.Inputs.Several("intake.signs").IsEmpty : null;
        return OperatorNotices.For(desk.Figures, demand, desk.Supply.Fuse, desk.Supply.Looped, worry);
    }

    private static Value.Option? Option(OperatorNotice notice) => notice switch
    {
        OperatorNotice.TellAfterwards => new("tell-afterwards"),
        OperatorNotice.AskFirst => new("ask-first"),
        OperatorNotice.ApplyFirst => new("apply-first"),
        _ => null,
    };
}
