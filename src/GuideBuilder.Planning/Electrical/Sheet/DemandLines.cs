namespace GuideBuilder.Planning.Electrical;

/// <summary>The lines about what the home draws.</summary>
internal static class DemandLines
{
    public static IEnumerable<SheetRow> Of(SheetDesk desk)
    {
        var home = HomeLoads.Of(desk.Figures, desk.Inputs);
        var found = HomeLoads.Demand(desk.Figures, desk.Inputs);
        var inputs = home.Select(l => new SheetFigure(l.Name, SheetDesk.Worth(l.Load?.Current), l.Origin)).Append(desk.Answer(HomeSupply.PhasesQuestion)).ToArray();
        var demand = found?.Demand.Highest;
        string[] rules = [.. home.Select(l => l.Load?.Kind).OfType<LoadKind>().Distinct().Select(k => "diversity-household-" + Diversity.Id(k)), "nominal-voltage"];
        yield return desk.Line(
            "demand", "diversity", inputs, SheetDesk.Worth(demand), desk.Answer(HomeSupply.FuseQuestion),
            Limits.AtMost(desk.Figures, demand, desk.Figures.Amps(desk.Supply.Fuse).Of("A")), [.. rules, "close-margin"]);
        if (desk.Supply.Phases == Phases.Three)
        {
            yield return Spread(desk, "demand-first", found?.Demand.First);
            yield return Spread(desk, "demand-second", found?.Demand.Second);
            yield return Spread(desk, "demand-third", found?.Demand.Third);
        }

        yield return desk.Line(
            "notice", "notice", [SheetDesk.Worked("demand", demand), desk.Answer(HomeSupply.FuseQuestion), desk.Answer(HomeSupply.LoopedQuestion)],
            Option(Notice(desk, demand)), "notify-threshold");
    }

    /// <summary>The notice to the operator; a warning sign at the intake counts as worry.</summary>
    public static OperatorNotice Notice(SheetDesk desk, Quantity? demand)
    {
        bool? worry = desk.Inputs.Lookup("intake.signs").Standing == Standing.Known ? !desk.Inputs.Several("intake.signs").IsEmpty : null;
        return OperatorNotices.For(desk.Figures, demand, desk.Supply.Fuse, desk.Supply.Looped, worry);
    }

    private static SheetRow Spread(SheetDesk desk, string id, Quantity? demand) => desk.Line(
        id, "balance", [], SheetDesk.Worth(demand), desk.Answer(HomeSupply.FuseQuestion),
        Limits.AtMost(desk.Figures, demand, desk.Figures.Amps(desk.Supply.Fuse).Of("A")), "close-margin");

    private static Value.Option? Option(OperatorNotice notice) => notice switch
    {
        OperatorNotice.TellAfterwards => new("tell-afterwards"),
        OperatorNotice.AskFirst => new("ask-first"),
        OperatorNotice.ApplyFirst => new("apply-first"),
        _ => null,
    };
}
