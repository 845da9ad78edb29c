using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Other works that start before the old intake is gone, on Thursday 11 February 2027 in this plan.</summary>
public sealed class EarlyWorksTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.Question("works.starts", QuestionKind.Date)],
        Steps = [Small.Step("plan", 5), Small.Turn("joint", "operator", 1) with { After = [Small.After("plan")] }, Small.Step("gone", 3, after: ["joint"]) with { FreesPlace = true }],
    };

    [Fact]
    public void A_builder_who_would_start_in_the_way_is_told_of_with_the_day_and_the_share_of_trials() =>
        Assert.Equal(new EarlyWorks(new(2027, 2, 10), new(2027, 2, 11), 0), Early(Guidance, new(2027, 2, 10)));

    [Theory]
    [InlineData(11)]
    [InlineData(20)]
    public void One_who_starts_then_or_later_is_not(int day) => Assert.Null(Early(Guidance, new(2027, 2, day)));

    [Fact]
    public void Nothing_is_told_where_no_place_becomes_free() =>
        Assert.Null(Early(Guidance with { Steps = [.. Guidance.Steps.Select(s => s with { FreesPlace = false })] }, new(2027, 2, 2)));

    [Fact]
    public void The_cover_and_the_sequence_say_it()
    {
        var home = Home.Given("home: {nation: england, kind: semi}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\nintake: {service: underground, signs: none}\nworks: {starts: 2027-01-11}\n");

        Assert.Equal(new LocalDate(2027, 1, 11), home.Plan.Schedule.EarlyWorks!.Starts);
        Assert.Contains("before the old intake is out of the way", home.Words("cover"), StringComparison.Ordinal);
        Assert.Contains("before the old intake is out of the way", home.Words("the-sequence"), StringComparison.Ordinal);
    }

    private static EarlyWorks? Early(Guidance guidance, LocalDate starts) => Small.Plan(guidance, ("works.starts", starts)).Schedule.EarlyWorks;
}
