using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Log;

/// <summary>A quotation among the papers, on Monday 1 February 2027.</summary>
public sealed class PaperTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Steps =
        [
            Small.Step("apply", 1, "household") with { LoggedAs = new(LogKind.Applied, "operator"), DoneWith = ["quote"] },
            Small.Step("quote", 40, after: ["apply"]) with { LoggedAs = new(LogKind.Quoted, "operator"), NoLaterThan = [new("pay", 90, DayCount.CalendarDays, null, Place.None)] },
            Small.Step("inspect", 10, "electrician"),
            Small.Step("pay", 1, "household", ["quote", "inspect"]) with { LoggedAs = new(LogKind.Accepted, "operator") },
        ],
    };

    [Fact]
    public void A_quotation_held_has_come_and_was_asked_for()
    {
        var plan = Plan(Paper("operator", new(2027, 1, 20), new(2027, 6, 1)));

        Assert.Equal((new LocalDate(2027, 1, 20), true), (Dates(plan, "quote").EarliestFinish, Dates(plan, "apply").Done));
        Assert.Equal(new LocalDate(2027, 2, 15), Dates(plan, "pay").EarliestStart);
        Assert.Empty(plan.Schedule.Limits);
    }

    [Fact]
    public void Its_last_day_binds_the_payment_and_the_conflict_is_told()
    {
        var limit = Plan(Paper("operator", new(2027, 1, 20), new(2027, 2, 5))).Schedule.Limits.Single();

        Assert.Equal(("quote", "pay", 16), (limit.Step, limit.Other, limit.Most));
        Assert.True(limit.Least > 16);
    }

    [Theory]
    [InlineData("electrician", 20, 60)]
    [InlineData("operator", 20, -1)]
    [InlineData("operator", 40, 60)]
    public void One_of_somebody_else_one_that_has_run_out_and_one_of_a_day_to_come_are_none(string from, int dated, int until) =>
        Assert.False(Dates(Plan(Paper(from, new LocalDate(2027, 1, 1).PlusDays(dated - 1), Small.Today.PlusDays(until))), "quote").Done);

    [Fact]
    public void What_the_log_says_of_it_counts()
    {
        var logged = Small.Event(new(2027, 1, 25), LogKind.Quoted, party: "operator");

        Assert.Equal(new LocalDate(2027, 1, 25), Dates(Plan(Paper("operator", new(2027, 1, 20), new(2027, 6, 1)), logged), "quote").EarliestFinish);
    }

    private static Plan Plan(Paper paper, params LogEvent[] log) => Small.Plan(Guidance, Small.Answers(Guidance) with { Papers = [paper], Log = [.. log] });

    private static Paper Paper(string from, LocalDate dated, LocalDate until) => new(PaperKind.Quotation, from, dated, until, null, [], [], null, Place.None);

    private static StepDates Dates(Plan plan, string step) => plan.Steps.Single(s => s.Step.Item.Id == step).Dates!;
}
