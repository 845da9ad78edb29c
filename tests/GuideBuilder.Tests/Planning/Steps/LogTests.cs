using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

public sealed class LogTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Steps =
        [
            Small.Step("apply", 1, "household"),
            Small.Step("quote", 5, after: ["apply"]),
            Small.Turn("joint", "operator", 1) with { After = [Small.After("quote")] },
            Small.Turn("tests", "electrician", 2),
        ],
    };

    [Fact]
    public void What_is_done_keeps_its_day_and_has_no_float()
    {
        var dates = Dates([Small.Event(new(2027, 1, 16), LogKind.Applied, "apply")], "apply");

        Assert.Equal((true, new LocalDate(2027, 1, 16), new LocalDate(2027, 1, 16), 0), (dates.Done, dates.EarliestStart, dates.LatestFinish, dates.TotalFloat));
    }

    [Fact]
    public void What_is_not_done_starts_today_or_later() =>
        Assert.Equal(Small.Today, Dates([Small.Event(new(2027, 1, 16), LogKind.Applied, "apply")], "quote").EarliestStart);

    [Fact]
    public void A_date_given_moves_the_whole_meeting_to_it()
    {
        var given = Small.Event(new(2027, 1, 20), LogKind.DateGiven, "joint", new(2027, 2, 22));

        Assert.Equal(new LocalDate(2027, 2, 22), Dates([given], "joint").EarliestStart);
        Assert.Equal(new LocalDate(2027, 2, 22), Dates([given], "tests").EarliestStart);
        Assert.Equal(new LocalDate(2027, 2, 22), Dates([given], "joint").DateGiven);
    }

    [Fact]
    public void A_date_that_cannot_be_met_stays() =>
        Assert.Equal(new LocalDate(2027, 2, 2), Dates([Small.Event(new(2027, 1, 20), LogKind.DateGiven, "joint", new(2027, 2, 2))], "joint").EarliestStart);

    [Theory]
    [InlineData("joint", null)]
    [InlineData(null, "operator")]
    public void A_missed_date_is_void_for_all_who_were_to_meet(string? step, string? party)
    {
        LogEvent[] log =
        [
            Small.Event(new(2027, 1, 29), LogKind.Missed, step, party: party),
            Small.Event(new(2027, 1, 10), LogKind.DateGiven, "joint", new(2027, 1, 29)),
            Small.Event(new(2027, 1, 11), LogKind.DateGiven, "tests", new(2027, 1, 29)),
        ];

        Assert.All(["joint", "tests"], s => Assert.Null(Dates(log, s).DateGiven));
        Assert.All(["joint", "tests"], s => Assert.Equal(new LocalDate(2027, 2, 9), Dates(log, s).EarliestStart));
    }

    [Fact]
    public void A_date_given_after_the_missed_one_counts() =>
        Assert.Equal(
            new LocalDate(2027, 2, 22),
            Dates([Small.Event(new(2027, 1, 29), LogKind.Missed, "joint"), Small.Event(new(2027, 1, 30), LogKind.DateGiven, "joint", new(2027, 2, 22))], "joint").EarliestStart);

    [Fact]
    public void A_turn_that_is_done_leaves_the_others_free_to_meet_again()
    {
        LogEvent[] log = [Small.Event(new(2027, 1, 29), LogKind.Done, "joint"), Small.Event(new(2027, 1, 29), LogKind.Missed, "tests")];

        Assert.Equal(new LocalDate(2027, 1, 29), Dates(log, "joint").EarliestStart);
        Assert.Equal(Small.Today, Dates(log, "tests").EarliestStart);
    }

    [Theory]
    [InlineData("quote", "apply")]
    [InlineData("joint", "apply quote")]
    [InlineData("apply", "")]
    public void What_only_a_step_that_is_done_can_show_is_done_on_its_day(string done, string shown)
    {
        var guidance = Guidance with { Steps = [Guidance.Steps[0] with { DoneWith = ["quote"] }, Guidance.Steps[1] with { DoneWith = ["tests", "joint"] }, .. Guidance.Steps[2..]] };
        var plan = Small.Plan(guidance, Small.Answers(guidance) with { Log = [Small.Event(new(2027, 1, 16), LogKind.Done, done)] });

        Assert.Equal(shown, string.Join(' ', plan.Steps.Where(s => s.Dates!.Done && s.Step.Item.Id != done).Select(s => s.Step.Item.Id)));
        Assert.All(plan.Steps.Where(s => s.Dates!.Done), s => Assert.Equal(new LocalDate(2027, 1, 16), s.Dates!.EarliestFinish));
    }

    [Fact]
    public void What_the_log_says_of_a_step_outranks_what_another_shows()
    {
        var guidance = Guidance with { Steps = [Guidance.Steps[0] with { DoneWith = ["quote"] }, .. Guidance.Steps[1..]] };
        var plan = Small.Plan(guidance, Small.Answers(guidance) with { Log = [Small.Event(new(2027, 1, 16), LogKind.Done, "quote"), Small.Event(new(2027, 1, 11), LogKind.Done, "apply")] });

        Assert.Equal(new LocalDate(2027, 1, 11), plan.Steps[0].Dates!.EarliestFinish);
    }

    [Fact]
    public void A_promise_or_a_failure_shows_nothing()
    {
        var guidance = Guidance with { Steps = [Guidance.Steps[0] with { DoneWith = ["joint"] }, .. Guidance.Steps[1..]] };
        LogEvent[] log = [Small.Event(new(2027, 1, 10), LogKind.DateGiven, "joint", new(2027, 1, 29)), Small.Event(new(2027, 1, 29), LogKind.Missed, "joint")];

        Assert.False(Small.Plan(guidance, Small.Answers(guidance) with { Log = [.. log] }).Steps[0].Dates!.Done);
    }

    private static StepDates Dates(LogEvent[] log, string step) =>
        Small.Plan(Guidance, Small.Answers(Guidance) with { Log = [.. log] }).Steps.Single(s => s.Step.Item.Id == step).Dates!;
}
