using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

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

    [Fact]
    public void A_visit_that_fails_puts_off_the_whole_works_day_and_digs_nothing_again()
    {
        var guidance = Small.Empty with
        {
            Steps =
            [
                Small.Step("hole", 2) with { NoLaterThan = [new("joint", 3, DayCount.CalendarDays, null, Place.None)] },
                Small.Turn("joint", "operator", 1) with { After = [Small.After("hole")] },
                Small.Turn("meter", "electrician", 2) with { MayHappen = [Event("missed", 1) with { Costs = [] }] },
                Small.Step("fill", 1, after: ["joint"]),
            ],
        };
        var plan = Small.Plan(guidance);
        DateRange Start(string step) => plan.Steps.First(s => s.Step.Item.Id == step).Dates!.StartRange;

        Assert.Equal(new LocalDate(2027, 2, 1), Start("hole").Late);
        Assert.Equal(new LocalDate(2027, 2, 10), Start("joint").Early);
        Assert.Equal(Start("joint"), Start("meter"));
        Assert.Equal(new LocalDate(2027, 2, 11), Start("fill").Late);
        Assert.Equal(new LocalDate(2027, 2, 3), plan.Schedule.BaseFinish);
        Assert.Equal(new LocalDate(2027, 2, 10), plan.Chances!.Finish.Highest);
    }

    [Fact]
    public void A_delay_in_calendar_days_counts_every_day()
    {
        var days = Small.Takes(DayCount.CalendarDays, 5, 5, 5);
        var guidance = Guidance with { Steps = [Guidance.Steps[0], Guidance.Steps[1] with { MayHappen = [Event("missed", 1) with { TakesMore = days }] }] };

        Assert.Equal(new LocalDate(2027, 2, 9), Small.Plan(guidance).Chances!.Finish.Highest);
    }

    [Fact]
    public void An_event_brings_the_cost_that_is_in_the_plan()
    {
        var guidance = Guidance with
        {
            Costs = [Guidance.Costs[0], Small.Cost("elsewhere", price: "price", when: new Condition.AnyOf([], Place.None)), Guidance.Costs[1]],
            Steps = [Guidance.Steps[0], Guidance.Steps[1] with { MayHappen = [Event("missed", 1) with { Costs = ["elsewhere", "again"] }] }],
        };

        Assert.Equal("again", Small.Plan(guidance).Events.Single().Cost!.Cost.Item.Id);
        Assert.Equal(150, Small.Plan(guidance).Chances!.Cost.Lowest);
    }

    private static ChanceEvent Event(string id, decimal chance) =>
        new(id, Small.Words(id), Condition.Always, chance, Small.Takes(DayCount.WorkingDays, 5, 5, 5), ["again"], Small.Words("because"), Basis.Nothing, Place.None);
}
