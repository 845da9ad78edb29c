using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Today is Monday 1 February 2027 in all of these.</summary>
public sealed class ScheduleTests
{
    [Theory]
    [InlineData("yes", "survey 1-5, apply 8-8")]
    [InlineData("no", "survey 1-5, apply 1-1")]
    [InlineData(null, "survey 1-5, apply 8-8")]
    public void A_wait_on_a_condition_counts_where_it_holds_or_is_assumed(string? answer, string days)
    {
        var guidance = Small.Empty with
        {
            Questions = [.. Small.Empty.Questions, Small.YesNo("a.load")],
            Steps = [Small.Step("survey", 5), Small.Step("apply", 1) with { After = [Small.After("survey") with { If = Small.Is("a.load", "yes") }] }],
        };

        Assert.Equal(days, Days(Small.Plan(guidance, answer is null ? [] : [("a.load", answer)])));
    }

    [Fact]
    public void Steps_use_their_own_partys_days_and_follow_each_other()
    {
        var plan = Plan([Small.Step("ask", 1, "household"), Small.Step("quote", 5, after: ["ask"]), Small.Step("pay", 0, "household", ["quote"])]);

        Assert.Equal("ask 1-1, quote 2-8, pay 9-9", Days(plan));
        Assert.Equal(["ask", "quote", "pay"], plan.Schedule.DrivingSteps);
        Assert.Equal("quote", Dates(plan, "pay").DrivenBy);
    }

    [Fact]
    public void Part_of_a_day_takes_a_whole_one_and_hours_take_one_day() =>
        Assert.Equal("a 1-2, b 1-1", Days(Plan([Small.Step("a", 1.5m), Small.Step("b", 0) with { Takes = Small.Takes(DayCount.Hours, 1, 2, 3) }])));

    [Fact]
    public void A_wait_in_calendar_days_runs_over_the_weekend() =>
        Assert.Equal("wait 1-7", Days(Plan([Small.Step("wait", 0) with { Takes = Small.Takes(DayCount.CalendarDays, 7, 7, 7) }])));

    [Fact]
    public void A_lag_is_counted_in_the_days_of_whom_it_names()
    {
        var own = Small.Step("visit", 1) with { After = [Small.After("ask", 5, "operator")] };
        var every = Small.Step("look", 1) with { After = [Small.After("ask", 5)] };

        Assert.Equal("ask 1-1, visit 9-9, look 8-8", Days(Plan([Small.Step("ask", 1), own, every])));
    }

    [Fact]
    public void A_holiday_is_kept_by_those_who_keep_it()
    {
        var guidance = Guidance([Small.Step("theirs", 1), Small.Step("ours", 1, "household"), Small.Step("his", 1, "electrician")]);
        var plan = Small.Plan(guidance with
        {
            Parties = [.. Small.Empty.Parties[..2], Small.Empty.Parties[2] with { KeepsHolidays = false }],
            Tables = guidance.Tables with { Holidays = [guidance.Tables.Holidays[0] with { Days = [new(Small.Today, Small.Words("A holiday"))] }] },
        });

        Assert.Equal("theirs 2-2, ours 2-2, his 1-1", Days(plan));
    }

    [Fact]
    public void The_household_does_nothing_while_away()
    {
        var guidance = Guidance([Small.Step("dig", 2, "household"), Small.Turn("joint", "operator", 1)]) with
        {
            Questions = [.. Small.Empty.Questions, Small.Question("dates.away", QuestionKind.Days)],
        };

        Assert.Equal("dig 3-4, joint 3-3", Days(Small.Plan(guidance, ("dates.away", new DateInterval(Small.Today, Small.Today.PlusDays(1))))));
    }

    [Fact]
    public void A_link_to_a_step_that_is_not_in_the_plan_leads_on_to_that_steps_own()
    {
        var absent = Small.Step("survey", 10, when: Small.Any()) with { After = [Small.After("ask", 5)] };

        Assert.Equal("ask 1-1, dig 2-2", Days(Plan([Small.Step("ask", 1), absent, Small.Step("dig", 1, after: ["survey"])])));
    }

    [Fact]
    public void A_meeting_falls_on_the_first_day_that_all_can_and_has_its_turns_in_order()
    {
        Step[] steps = [Small.Turn("live-tests", "electrician", 3) with { SupplyOff = false }, Small.Turn("joint", "operator", 1), Small.Turn("meter", "operator", 2) with { Hours = ThreePoint.Of(0.5m, 1.5m, 3) }];
        var plan = Plan([Small.Step("tails", 3, "electrician"), .. steps.Select(s => s with { After = s.Id == "live-tests" ? [Small.After("tails"), Small.After("joint")] : [] })]);

        var meeting = Assert.Single(plan.Schedule.Meetings);
        Assert.Equal(new LocalDate(2027, 2, 4), meeting.Day);
        Assert.Equal(["joint 0-1 True", "meter 1-2.5 True", "live-tests 2.5-3.5 False"], meeting.Turns.Select(t => FormattableString.Invariant($"{t.Step} {t.Starts}-{t.Ends} {t.SupplyOff}")));
        Assert.Equal(ThreePoint.Of(1.5m, 2.5m, 4), plan.Schedule.OffSupplyHours);
    }

    [Fact]
    public void Fridays_and_days_before_holidays_are_left_out_of_meetings_where_that_is_wished()
    {
        var guidance = Guidance([Small.Step("wait", 4), Small.Turn("joint", "operator", 1) with { After = [Small.After("wait")] }]) with
        {
            Questions = [.. Small.Empty.Questions, Small.YesNo("dates.avoid-fridays")],
        };

        Assert.Equal("wait 1-4, joint 8-8", Days(Small.Plan(guidance, ("dates.avoid-fridays", "yes"))));
        Assert.Equal("wait 1-4, joint 5-5", Days(Small.Plan(guidance, ("dates.avoid-fridays", "no"))));
    }

    [Fact]
    public void The_households_hours_are_those_given_for_its_duties_and_nothing_for_a_wait()
    {
        var plan = Plan([Small.Step("dig", 2, "household") with { Hours = ThreePoint.Certain(6) }, Small.Step("ring", 0, "household") with { Takes = Small.Takes(DayCount.Hours, 1, 1, 1) }, Small.Step("wait", 9, "household"), Small.Step("joint", 3) with { Hours = ThreePoint.Certain(5) }]);

        Assert.Equal(ThreePoint.Certain(7), plan.Schedule.HouseholdHours);
    }

    [Fact]
    public void A_step_outside_the_assumed_world_may_apply_but_has_no_date()
    {
        var guidance = Guidance([Small.Step("quick", 1, when: Small.Is("a.old", "no")), Small.Step("slow", 1, when: Small.Is("a.old", "yes"))]) with { Questions = [.. Small.Empty.Questions, Small.YesNo("a.old")] };

        Assert.Equal(["quick Open False", "slow Open True"], Small.Plan(guidance).Steps.Select(s => $"{s.Step.Item.Id} {s.Step.State} {s.Dates is not null}"));
    }

    [Fact]
    public void Steps_that_wait_for_each_other_are_a_fault()
    {
        var guidance = Guidance([Small.Step("a", 1, after: ["b"]), Small.Step("b", 1, after: ["a"])]);

        Assert.Equal("HB2006", Assert.Single(Small.Staged(guidance, Small.Answers(guidance)).Faults).Code);
    }

    [Fact]
    public void Parties_that_never_share_a_day_cannot_meet()
    {
        var guidance = Guidance([Small.Turn("a", "operator", 1), Small.Turn("b", "electrician", 2)]) with
        {
            Parties = [Small.Party("household"), Small.Party("operator") with { Works = [IsoDayOfWeek.Monday] }, Small.Party("electrician") with { Works = [IsoDayOfWeek.Tuesday] }],
        };

        Assert.Equal("HB2011", Assert.Single(Small.Staged(guidance, Small.Answers(guidance)).Faults).Code);
    }

    [Fact]
    public void A_step_of_a_party_without_working_days_is_a_fault()
    {
        var guidance = Guidance([Small.Step("a", 1, "nobody")]);

        Assert.Equal("HB2005", Assert.Single(Small.Staged(guidance, Small.Answers(guidance)).Faults).Code);
    }

    private static Guidance Guidance(Step[] steps) => Small.Empty with { Steps = [.. steps] };

    private static Plan Plan(Step[] steps) => Small.Plan(Guidance(steps));

    private static StepDates Dates(Plan plan, string step) => plan.Steps.Single(s => s.Step.Item.Id == step).Dates!;

    private static string Days(Plan plan) =>
        string.Join(", ", plan.Steps.Where(s => s.Dates is not null).Select(s => $"{s.Step.Item.Id} {s.Dates!.EarliestStart.Day}-{s.Dates.EarliestFinish.Day}"));
}
