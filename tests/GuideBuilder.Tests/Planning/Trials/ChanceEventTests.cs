using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

public sealed class ChanceEventTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("a.old")],
        Steps = [Small.Step("wait", 3), Small.Step("joint", 1, after: ["wait"]) with { MayHappen = [Event("missed", 0.25m)] }],
        Costs = [Small.Cost("alteration"), Small.Cost("again", price: "visit")],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 100, 100, 100, VatBasis.Outside), Small.Price("visit", 50, 50, 50, VatBasis.Outside)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    [Fact]
    public void An_event_brings_its_cost_and_its_days_in_its_share_of_the_trials_and_nothing_to_the_base_plan()
    {
        var plan = Small.Plan(Guidance);

        Assert.Equal((100, 100, 150), (plan.Money.Base, plan.Chances!.Cost.P50, plan.Chances.Cost.Highest));
        Assert.Equal((new(2027, 2, 4), new(2027, 2, 11)), (plan.Schedule.BaseFinish, plan.Chances.Finish.Highest));
        Assert.Equal(0.25, plan.Events.Single().Share, 0.02);
        Assert.False(plan.Costs.First(c => c.Cost.Item.Id == "again").Added);
    }

    [Fact]
    public void An_event_happens_only_where_its_condition_holds()
    {
        var guidance = Guidance with { Steps = [Guidance.Steps[0], Guidance.Steps[1] with { MayHappen = [Event("missed", 1) with { AppliesIf = Small.Is("a.old", "yes") }] }] };

        Assert.Equal(0.5, Small.Plan(guidance).Events.Single().Share, 0.001);
        Assert.Equal(0, Small.Plan(guidance, ("a.old", "no")).Events.Single().Share);
        Assert.Equal(1, Small.Plan(guidance, ("a.old", "yes")).Events.Single().Share);
    }

    [Fact]
    public void What_is_done_has_no_more_events()
    {
        var answers = Small.Answers(Guidance) with { Log = [Small.Event(Small.Today, LogKind.Done, "joint")] };

        Assert.Equal((100, 0), (Small.Plan(Guidance, answers).Chances!.Cost.Highest, Small.Plan(Guidance, answers).Events.Single().Share));
    }

    private static ChanceEvent Event(string id, decimal chance) =>
        new(id, Small.Words(id), Condition.Always, chance, Small.Takes(DayCount.WorkingDays, 5, 5, 5), "again", Small.Words("because"), Basis.Nothing, Place.None);
}
