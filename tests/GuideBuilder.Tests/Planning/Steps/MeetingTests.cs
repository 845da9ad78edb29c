using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Three crews that meet, from Monday 1 February 2027.</summary>
public sealed class MeetingTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions =
        [
            .. Small.Empty.Questions, Small.YesNo("people.equipment"), Small.Question("operator.evening", QuestionKind.Text),
            Small.Amount("operator.notice", "working days", 2), Small.YesNo("dates.avoid-fridays"),
        ],
        Parties = [.. Small.Empty.Parties, Small.Party("meter")],
        Costs = [Small.Cost("standby"), Small.Cost("wasted")],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 0, 50, 90)], Vat = [Small.Vat("standard", 0.2m)] },
        Steps =
        [
            Small.Step("plan", 1, "household"),
            Small.Step("ring", 1, "household") with { OnDaysOf = ["operator", "meter"], NoLaterThan = [new("joint", 7, DayCount.CalendarDays, null, Place.None)], EachTime = true },
            Small.Turn("joint", "operator", 1) with { After = [Small.After("ring", 2, "operator") with { Or = "operator.notice" }], Again = Small.Takes(DayCount.WorkingDays, 5, 10, 20) },
            Small.Turn("connect", "meter", 2) with { Again = Small.Takes(DayCount.WorkingDays, 1, 3, 5) },
            Small.Turn("tests", "electrician", 3),
        ],
        Meetings =
        [
            new(
                "works-day",
                Small.Words("The works day"),
                new(Small.Is("people.equipment", "yes"), ["plan"], ["operator.evening"]),
                [new("operator", 2, "operator.notice", ["wasted"]), new("meter", 1, null, ["wasted", "gone"]), new("electrician", 3, null, ["standby"])],
                [new("no-meter", Small.Words("Nobody comes"), ["connect"], Small.Words("Ring."), Small.Words("They do.")), new("elsewhere", Small.Words("No such turn"), ["other"], Small.Words("Ring."), Small.Words("They do."))],
                Basis.Nothing,
                Place.None),
        ],
    };

    [Fact]
    public void The_crews_are_rung_on_a_day_on_which_they_work()
    {
        var plan = Plan(new(2027, 2, 6), ("people.equipment", "no"));

        Assert.Equal((new(2027, 2, 8), new LocalDate(2027, 2, 11)), (Dates(plan, "ring").EarliestStart, Day(plan).Day));
    }

    [Fact]
    public void An_answered_notice_outranks_the_common_one_and_the_call_comes_before_it()
    {
        var plan = Plan(Small.Today, ("people.equipment", "no"), ("operator.notice", Quantity.Of(12, "working days")));

        Assert.Equal((new(2027, 2, 1), new LocalDate(2027, 2, 18)), (Dates(plan, "ring").EarliestStart, Day(plan).Day));
        Assert.Equal(new LocalDate(2027, 2, 2), Day(plan).Eve.Single(e => e.Party == "operator").FreeUntil);
    }

    [Fact]
    public void Each_crew_that_drops_out_says_whom_to_call_off_by_when_and_what_else_it_costs()
    {
        var day = Day(Plan(Small.Today, ("people.equipment", "no")));

        Assert.Equal(new LocalDate(2027, 2, 4), day.Day);
        Assert.Equal(
            [
                "operator: meter by 3 (wasted), electrician by 1 (standby); 18",
                "meter: operator by 2 (wasted), electrician by 1 (standby); 18",
                "electrician: operator by 2 (wasted), meter by 3 (wasted); 18",
            ],
            day.DropOuts.Select(d => $"{d.Party}: {string.Join(", ", d.CallOff.Select(c => $"{c.Party} by {c.FreeUntil.Day} ({string.Join(' ', c.Costs)})"))}; {d.NextDay.Day}"));
    }

    [Fact]
    public void What_can_go_wrong_has_the_next_possible_day_and_only_turns_of_this_run_count() =>
        Assert.Equal(("no-meter", new LocalDate(2027, 2, 9)), Assert.Single(Day(Plan(Small.Today, ("people.equipment", "no"))).Mishaps) is var one ? (one.Mishap.Id, one.NextDay) : default);

    [Theory]
    [InlineData("yes")]
    [InlineData(null)]
    public void With_medical_dependence_or_none_known_the_day_is_not_to_be_fixed(string? equipment) =>
        Assert.Equal(["plan", "operator.evening"], Day(Plan(Small.Today, equipment is null ? [] : [("people.equipment", equipment)])).HeldFor);

    [Fact]
    public void Without_it_nothing_holds_the_day_back() => Assert.False(Day(Plan(Small.Today, ("people.equipment", "no"))).IsHeld);

    [Fact]
    public void A_plan_that_is_made_and_an_answer_in_writing_let_the_day_be_fixed()
    {
        var answers = Small.Answers(Guidance, ("people.equipment", "yes"), ("operator.evening", new Value.Words("The duty engineer, on the number of the letter.")));

        Assert.Equal(["plan"], Day(Small.Plan(Guidance, answers)).HeldFor);
        Assert.False(Day(Small.Plan(Guidance, answers with { Log = [Small.Event(new(2027, 1, 30), LogKind.Done, "plan")] })).IsHeld);
    }

    [Fact]
    public void Not_before_days_off_is_assumed_until_somebody_says_otherwise()
    {
        LocalDate Friday(params (string, object)[] given) => Day(Plan(new(2027, 2, 2), [("people.equipment", "no"), .. given])).Day;

        Assert.Equal(new(2027, 2, 5), Friday(("dates.avoid-fridays", "no")));
        Assert.Equal(new(2027, 2, 8), Friday(("dates.avoid-fridays", "yes")));
        Assert.Equal(new LocalDate(2027, 2, 8), Friday());
    }

    [Fact]
    public void After_a_missed_day_the_crews_are_rung_again_and_what_is_done_is_off_the_timetable()
    {
        LogEvent[] log =
        [
            Small.Event(new(2027, 1, 10), LogKind.DateGiven, "connect", new(2027, 1, 29)),
            Small.Event(new(2027, 1, 25), LogKind.Done, "ring"),
            Small.Event(new(2027, 1, 29), LogKind.Done, "joint"),
            Small.Event(new(2027, 1, 29), LogKind.Missed, "connect"),
        ];
        var plan = Small.Plan(Guidance, Small.Answers(Guidance, ("people.equipment", "no")) with { Log = [.. log] });

        Assert.False(Dates(plan, "ring").Done);
        Assert.Equal((new(2027, 2, 3), "connect tests"), (Day(plan).Day, string.Join(' ', Day(plan).Turns.Select(t => t.Step))));
    }

    private static Plan Plan(LocalDate today, params (string Name, object Value)[] given) => Small.Plan(Guidance, Small.Answers(Guidance, given), today);

    private static MeetingDay Day(Plan plan) => plan.Schedule.Meetings.Single();

    private static StepDates Dates(Plan plan, string step) => plan.Steps.Single(s => s.Step.Item.Id == step).Dates!;
}
