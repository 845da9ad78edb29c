using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Log;

/// <summary>Today is Monday 1 February 2027 unless a test says otherwise.</summary>
public sealed class WhereaboutsTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("home.doubt"), Small.Question("dates.needed-by", QuestionKind.Date)],
        Steps =
        [
            Small.Step("apply", 1, "household") with { LoggedAs = new(LogKind.Applied, "operator") },
            Small.Step("wait", 5, after: ["apply"]),
            Small.Step("quote", 0, after: ["wait"]) with { LoggedAs = new(LogKind.Quoted, "operator"), NoLaterThan = [new("pay", 90, DayCount.CalendarDays, null, Place.None)] },
            Small.Step("inspect", 3, "electrician"),
            Small.Step("sample", 2, "electrician", when: Small.Is("home.doubt", "yes")),
            Small.Step("pay", 1, "household", ["quote", "inspect", "sample"]) with { LoggedAs = new(LogKind.Accepted, "operator") },
            Small.Turn("joint", "operator", 1) with { After = [Small.After("pay")], Again = Small.Takes(DayCount.WorkingDays, 1, 10, 20) },
            Small.Turn("tests", "electrician", 2),
        ],
        Clocks =
        [
            Clock("late-quote", LogKind.Applied, "apply", 5) with { EndsAt = LogKind.Quoted, EndsAtStep = "quote", Sum = new(Quantity.Of(15, "£"), SumFor.EachDayLate, new(2015, 4, 1)) },
            Clock("no-show", LogKind.Missed, "tests", 10) with { Party = "electrician", EndsAt = LogKind.Paid, Sum = new(Quantity.Of(30, "£"), SumFor.Failure, new(2016, 1, 1)) },
        ],
    };

    [Fact]
    public void What_waits_for_nothing_is_next_with_the_day_by_which_it_must_be_done() =>
        Assert.Equal("apply by 1, inspect by 8, sample by 8", string.Join(", ", Where([]).Next.Select(n => $"{n.Step} by {n.By.Day}")));

    [Fact]
    public void What_the_log_has_overtaken_is_neither_next_nor_late()
    {
        var where = Where([Small.Event(new(2027, 1, 15), LogKind.Quoted, party: "operator")]);

        Assert.Equal(["inspect", "sample"], where.Next.Select(n => n.Step));
        Assert.Equal((1, "quote"), (where.Done, where.LastDone));
    }

    [Theory]
    [InlineData(LogKind.Applied, "apply")]
    [InlineData(LogKind.Quoted, "quote")]
    [InlineData(LogKind.Accepted, "pay")]
    public void A_happening_with_a_party_speaks_of_the_step_that_stands_for_it(LogKind what, string step) =>
        Assert.True(Dates([Small.Event(new(2027, 1, 15), what, party: "operator")], step).Done);

    [Fact]
    public void A_quotation_from_somebody_else_is_not_that_step() =>
        Assert.False(Dates([Small.Event(new(2027, 1, 15), LogKind.Quoted, party: "electrician")], "quote").Done);

    [Fact]
    public void Each_gate_before_the_payment_is_named_with_how_it_stands()
    {
        var open = Where([Small.Event(new(2027, 1, 15), LogKind.Quoted, party: "operator")]);
        var taken = Where([Small.Event(new(2027, 1, 20), LogKind.Done, "inspect"), Small.Event(new(2027, 1, 28), LogKind.Accepted, party: "operator")]);

        Assert.Equal("quote Done, inspect NotYet, sample MayApply", Gates(open));
        Assert.Equal("quote LeftOpen, inspect Done, sample LeftOpen", Gates(taken));
        Assert.All(open.Gates, g => Assert.Equal("pay", g.Payment));
    }

    [Fact]
    public void A_gate_that_does_not_apply_is_not_named() =>
        Assert.Equal("quote NotYet, inspect NotYet", Gates(Small.Plan(Guidance, ("home.doubt", "no")).Whereabouts));

    [Fact]
    public void A_clock_runs_from_the_log_and_owes_for_each_day_late()
    {
        var clock = Assert.Single(Where([Small.Event(new(2027, 1, 18), LogKind.Applied, party: "operator")]).Clocks);

        Assert.Equal((new(2027, 1, 18), new LocalDate(2027, 1, 25), 5, null), (clock.DayZero, clock.Due, clock.DaysLate, clock.Ended));
        Assert.Equal("£75", clock.Owed?.ToString());
    }

    [Fact]
    public void What_comes_after_five_counts_from_the_next_working_day()
    {
        var sent = Small.Event(new(2027, 1, 22), LogKind.Applied, party: "operator") with { AfterFive = true };

        Assert.Equal(new LocalDate(2027, 1, 25), Assert.Single(Where([sent]).Clocks).DayZero);
    }

    [Fact]
    public void A_clock_stops_at_what_it_waits_for()
    {
        var clock = Assert.Single(Where([Small.Event(new(2027, 1, 11), LogKind.Applied, party: "operator"), Small.Event(new(2027, 1, 18), LogKind.Quoted, party: "operator")]).Clocks);

        Assert.Equal((new LocalDate(2027, 1, 18), 0, null), (clock.Ended, clock.DaysLate, clock.Owed));
    }

    [Fact]
    public void A_missed_turn_starts_its_clock_and_leaves_the_house_dark()
    {
        LogEvent[] log =
        [
            Small.Event(new(2027, 1, 10), LogKind.DateGiven, "tests", new(2027, 1, 29)),
            Small.Event(new(2027, 1, 29), LogKind.Done, "joint"),
            Small.Event(new(2027, 1, 29), LogKind.Missed, "tests", party: "electrician"),
        ];
        var where = Where(log);

        Assert.Equal("£30", Assert.Single(where.Clocks).Owed?.ToString());
        Assert.Equal(new LocalDate(2027, 1, 29), where.DarkSince);
        Assert.Equal(("tests", LateBecause.Missed, 3), Assert.Single(where.Late) is var late ? (late.Step, late.Because, late.Days) : default);
    }

    [Fact]
    public void A_crew_that_did_not_come_comes_again_when_it_can()
    {
        var dates = Dates([Small.Event(new(2027, 1, 10), LogKind.DateGiven, "joint", new(2027, 1, 29)), Small.Event(new(2027, 1, 29), LogKind.Missed, "joint"), .. Paid], "joint");

        Assert.Equal((new LocalDate(2027, 2, 12), Decider.NotBefore), (dates.EarliestStart, dates.Decider));
    }

    [Fact]
    public void A_day_that_a_crew_gives_after_it_did_not_come_outranks_the_time_in_which_it_can_come_again()
    {
        LogEvent[] log = [Small.Event(new(2027, 1, 10), LogKind.DateGiven, "joint", new(2027, 1, 29)), Small.Event(new(2027, 1, 29), LogKind.Missed, "joint"), Small.Event(new(2027, 1, 30), LogKind.DateGiven, "joint", new(2027, 2, 3)), .. Paid];

        Assert.Equal(new LocalDate(2027, 2, 3), Dates(log, "joint").EarliestStart);
        Assert.DoesNotContain(Where(log).Conflicts, c => c.Step == "joint" && c.Chain.IsEmpty);
    }

    [Fact]
    public void Whoever_meets_with_a_crew_that_did_not_come_waits_for_that_crew()
    {
        LogEvent[] log = [Small.Event(new(2027, 1, 10), LogKind.DateGiven, "joint", new(2027, 1, 29)), Small.Event(new(2027, 1, 29), LogKind.Missed, "joint"), .. Paid];

        Assert.Equal((Decider.NotBefore, "joint"), Dates(log, "tests") is var dates ? (dates.Decider, dates.Via) : default);
    }

    [Fact]
    public void A_date_that_has_passed_without_a_word_is_late() =>
        Assert.Contains(new LateItem("joint", LateBecause.DatePassed, new(2027, 1, 29), 3), Where([.. Paid, Small.Event(new(2027, 1, 21), LogKind.DateGiven, "joint", new(2027, 1, 29))]).Late);

    [Fact]
    public void A_quotation_past_its_term_is_late_until_it_is_accepted()
    {
        var quoted = Small.Event(new(2026, 10, 1), LogKind.Quoted, party: "operator") with { ValidUntil = new(2027, 1, 25) };

        Assert.Contains(new LateItem("pay", LateBecause.QuotationEnded, new(2027, 1, 25), 7), Where([quoted]).Late);
        Assert.DoesNotContain(Where([quoted, Small.Event(new(2027, 1, 20), LogKind.Accepted, party: "operator")]).Late, l => l.Step == "pay");
    }

    [Fact]
    public void Only_what_could_begin_is_late_for_the_day_that_is_wished()
    {
        var wished = Small.Answers(Guidance, ("dates.needed-by", new LocalDate(2027, 2, 5)), ("home.doubt", "no"));
        var late = Small.Plan(Guidance, wished with { Log = [Small.Event(new(2027, 1, 20), LogKind.Noted)] }).Whereabouts.Late;

        Assert.Equal(("apply", LateBecause.LastDayPassed), Assert.Single(late) is var one ? (one.Step, one.Because) : default);
        Assert.Empty(Small.Plan(Guidance, wished).Whereabouts.Late);
    }

    [Fact]
    public void A_date_given_that_cannot_be_kept_is_told_with_its_chain()
    {
        var conflict = Where([Small.Event(new(2027, 1, 21), LogKind.DateGiven, "joint", new(2027, 2, 4))]).Conflicts.First(c => c.Step == "joint");

        Assert.Equal((new(2027, 2, 4), new LocalDate(2027, 2, 10)), (conflict.Given, conflict.Earliest));
        Assert.Equal(["apply", "wait", "quote", "pay"], conflict.Chain);
    }

    private static IEnumerable<LogEvent> Paid => [Small.Event(new(2027, 1, 20), LogKind.Accepted, party: "operator")];

    private static Clock Clock(string id, LogKind starts, string step, int limit) =>
        new(Small.Head("clock", id), "operator", starts, step, limit, DayCount.WorkingDays, Small.Words("It pays."), Small.Words("Write."));

    private static string Gates(Whereabouts where) => string.Join(", ", where.Gates.Select(g => $"{g.Step} {g.State}"));

    private static Whereabouts Where(LogEvent[] log) => Plan(log).Whereabouts;

    private static Plan Plan(LogEvent[] log) => Small.Plan(Guidance, Small.Answers(Guidance) with { Log = [.. log] });

    private static StepDates Dates(LogEvent[] log, string step) => Plan(log).Steps.Single(s => s.Step.Item.Id == step).Dates!;
}
