using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Limits between steps that no dates can keep, from Monday 1 February 2027.</summary>
public sealed class LimitTests
{
    // A quotation that has to be checked before it is accepted.
    private static readonly Guidance Quoted = Guidance(
        Small.Step("quote", 0) with { NoLaterThan = [Limit("accept", 2)] },
        Small.Step("check", 4, "household", after: ["quote"]),
        Small.Step("accept", 0, "household", after: ["check"]));

    // A hole that may not stay open, and a notice between it and the day.
    private static readonly Guidance Hole = Guidance(
        Small.Step("plans", 3),
        Small.Step("dig", 1, "household", after: ["plans"]) with { NoLaterThan = [Limit("joint", 10)] },
        Small.Step("ring", 1, "household", after: ["dig"]) with { NoLaterThan = [Limit("meter", 7) with { WherePossible = true }] },
        Small.Turn("joint", "operator", 1) with { After = [Small.After("ring", 20, "operator")] },
        Small.Turn("meter", "electrician", 2) with { After = [Small.After("ring", 20, "operator")] });

    [Fact]
    public void A_limit_that_cannot_be_kept_gives_way_and_is_told_with_its_chain_and_the_smallest_change()
    {
        var plan = Small.Plan(Quoted);

        Assert.Equal(["quote, accept: 2 4 CalendarDays, quote check accept, Duration check 2"], plan.Schedule.Limits.Select(Words));
        Assert.Equal(new LocalDate(2027, 2, 5), plan.Schedule.BaseFinish);
    }

    [Fact]
    public void A_limit_that_can_be_kept_is_kept_beside_one_that_cannot()
    {
        var guidance = Quoted with { Steps = [.. Quoted.Steps, Small.Step("wait", 30), Small.Step("fit", 1) with { NoLaterThan = [Limit("last", 1)] }, Small.Step("last", 1, after: ["wait", "fit"])] };
        var plan = Small.Plan(guidance);

        Assert.Equal(["quote"], plan.Schedule.Limits.Select(l => l.Step));
        Assert.True(Days(plan, "fit", "last") <= 1);
    }

    [Fact]
    public void The_notice_before_a_day_is_one_wait_however_many_turns_it_stands_at()
    {
        var limit = Assert.Single(Small.Plan(Hole).Schedule.Limits);

        Assert.Equal("dig, joint: 10 31 CalendarDays, dig ring joint, Wait joint 13", Words(limit));
    }

    [Fact]
    public void What_gives_way_gives_way_no_more_than_delays_nothing()
    {
        var plan = Small.Plan(Hole);
        var free = Small.Plan(Hole with { Steps = [.. Hole.Steps.Select(s => s with { NoLaterThan = [] })] });

        Assert.Equal(free.Schedule.BaseFinish, plan.Schedule.BaseFinish);
    }

    [Fact]
    public void Of_a_wish_to_be_near_that_cannot_be_kept_nothing_is_said() =>
        Assert.DoesNotContain(Small.Plan(Hole).Schedule.Limits, l => l.Step == "ring");

    [Fact]
    public void A_trial_in_which_a_limit_cannot_be_kept_still_has_its_dates()
    {
        var slow = Quoted with { Steps = [Quoted.Steps[0] with { NoLaterThan = [Limit("accept", 6)] }, Quoted.Steps[1] with { Takes = Small.Takes(DayCount.WorkingDays, 1, 4, 30) }, Quoted.Steps[2]] };
        var plan = Small.Plan(slow);

        Assert.Empty(plan.Schedule.Limits);
        Assert.InRange(plan.Chances!.Finish.Highest, new(2027, 2, 12), new(2027, 3, 31));
    }

    [Fact]
    public void Where_no_day_is_left_the_plan_has_no_dates_and_says_for_what()
    {
        var guidance = Guidance(Small.Step("plans", 3), Small.Turn("joint", "operator", 1) with { After = [Small.After("plans")] }) with
        {
            Questions = [.. Small.Empty.Questions, Small.Question("dates.away", QuestionKind.Days)],
        };
        var away = new Value.Days([new(Small.Today.PlusDays(10), Small.Today.PlusYears(4))]);
        var answers = Small.Answers(guidance, ("dates.away", away)) with { Log = [Small.Event(Small.Today.PlusDays(-2), LogKind.Done, "plans")] };
        var near = new Value.Days([new(Small.Today, Small.Today.PlusYears(4))]);
        var plan = Small.Plan(guidance, Small.Answers(guidance, ("dates.away", near)) with { Log = answers.Log });

        Assert.True(Small.Plan(guidance, answers).Schedule.Stuck.IsEmpty);
        Assert.Equal(["joint"], plan.Schedule.Stuck);
        Assert.True(plan.IsBeyond);
        Assert.Equal(["plans True"], plan.Steps.Where(s => s.Dates is not null).Select(s => $"{s.Step.Item.Id} {s.Dates!.Done}"));
    }

    private static string Words(LimitConflict l) => $"{l.Step}, {l.Other}: {l.Most} {l.Least} {l.Of}, {string.Join(' ', l.Chain)}, {l.Change?.Of} {l.Change?.Step} {l.Change?.Days}";

    private static LatestLink Limit(string step, int days) => new(step, days, DayCount.CalendarDays, null, Place.None);

    private static int Days(Plan plan, string from, string to)
    {
        StepDates Of(string id) => plan.Steps.Single(s => s.Step.Item.Id == id).Dates!;
        return Period.DaysBetween(Of(from).EarliestFinish, Of(to).EarliestStart);
    }

    private static Guidance Guidance(params Step[] steps) => Small.Empty with { Steps = [.. steps] };
}
