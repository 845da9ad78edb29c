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

    private static StepDates Dates(LogEvent[] log, string step) =>
        Small.Plan(Guidance, Small.Answers(Guidance) with { Log = [.. log] }).Steps.Single(s => s.Step.Item.Id == step).Dates!;
}
