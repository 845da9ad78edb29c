using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Days on which nobody is at home, from Monday 1 February 2027.</summary>
public sealed class AwayTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.Question("dates.away", QuestionKind.Days)],
        Steps = [Small.Step("order", 1), Small.Turn("joint", "operator", 1) with { After = [Small.After("order")] }],
    };

    [Theory]
    [InlineData("2027-02-01", "2027-02-03", "2027-02-04")]
    [InlineData("1900-01-01", "2027-02-09", "2027-02-10")]
    [InlineData("2027-02-03", "2199-12-31", "2027-02-02")]
    public void Crews_come_when_somebody_is_there_however_long_nobody_is(string first, string last, string day)
    {
        var plan = Small.Plan(Guidance, ("dates.away", new DateInterval(Day(first), Day(last))));

        Assert.Equal(Day(day), plan.Steps[1].Dates!.EarliestStart);
    }

    [Fact]
    public void Where_nobody_ever_is_there_is_no_day_and_that_is_told() =>
        Assert.Equal(["joint"], Small.Plan(Guidance, ("dates.away", new DateInterval(Day("1900-01-01"), Day("2199-12-31")))).Schedule.Stuck);

    private static LocalDate Day(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
