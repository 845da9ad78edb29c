using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>Homes of which no price and no date can be given from a desk.</summary>
public sealed class BeyondTests
{
    private const string Moves = "wish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\n";

    public static TheoryData<string> Answers =>
    [
        "home: {nation: england}\n" + Moves + "ground: {main-in-way: yes}",
        "home: {nation: england}\nintake: {service: overhead}\n" + Moves + "land: {voltage: high}",
        "home: {nation: scotland}\n" + Moves + "land: {pole-or-stay: yes}",
        "home: {nation: england}\nintake: {fuse-rating: 125 A}\n" + Moves,
        "home: {nation: england}\nmeter: {large-supply: yes}\n" + Moves,
        "home: {nation: england, kind: flat, storeys: 3, block-stair: single}\n" + Moves,
        "home: {nation: wales, kind: flat, storeys: 6}\n" + Moves,
        "home: {nation: england, kind: park-home, resold: yes}\n" + Moves,
        "home: {nation: ireland, operator-kind: not-recorded}\n" + Moves,
        "home: {nation: northern-ireland, business-use: yes}\n" + Moves,
    ];

    [Theory]
    [MemberData(nameof(Answers))]
    public void Each_such_answer_alone_takes_away_total_and_finish_and_keeps_the_rest(string answers)
    {
        var home = Home.Given(answers);
        var (cover, ways, money) = (home.Words("cover"), home.Words("ways"), home.Words("money"));

        Assert.True(home.Plan.IsBeyond);
        Assert.All(home.Plan.Steps, s => Assert.Null(s.Dates));
        Assert.Contains(home.Say("figure-beyond"), cover, StringComparison.Ordinal);
        Assert.All([cover, ways], p => Assert.DoesNotMatch("[£€][0-9]", p));
        Assert.DoesNotContain(home.Say("cost-sum"), money, StringComparison.Ordinal);
        Assert.Contains("This is who decides", money, StringComparison.Ordinal);

        // The page says which day it was bound and when its figures want another look; no day of the plan stands beside them.
        Assert.DoesNotMatch("\\b20[23][0-9]\\b", home.Words("the-sequence").Replace("24 November 2026", "", StringComparison.Ordinal).Replace("24 May 2027", "", StringComparison.Ordinal));
        Assert.DoesNotContain("\"finish\"", home.Data, StringComparison.Ordinal);
        Assert.NotEmpty(home.Hazards);
        Assert.Contains("letter-operator-application", home.Pages);
        Assert.NotEmpty(home.Plan.OpenQuestions);
    }

    [Fact]
    public void Each_answer_that_takes_a_home_beyond_the_book_is_among_these_and_alone()
    {
        var any = Assert.IsType<Condition.AnyOf>(Content.Guidance.Facts.Single(f => f.Id == Plan.BeyondFact).Rows.Single().When);
        var homes = Answers.Select(a => Home.Given(a.Data)).ToArray();

        Assert.All(homes, h => Assert.Single(any.Parts, c => Holds(c, h)));
        Assert.All(any.Parts, c => Assert.Contains(homes, h => Holds(c, h)));
    }

    [Theory]
    [InlineData("ground: {main-in-way: unknown}")]
    [InlineData("intake: {service: overhead}\nland: {voltage: unknown}")]
    [InlineData("land: {pole-or-stay: unknown}")]
    [InlineData("intake: {fuse-rating: unknown}")]
    [InlineData("meter: {large-supply: unknown}")]
    public void An_unknown_among_them_keeps_the_range_with_the_warning(string answer)
    {
        var home = Home.Given("home: {nation: england, kind: semi, resold: no, operator-kind: distribution, business-use: no}\n" + Moves + answer);

        Assert.False(home.Plan.IsBeyond);
        Assert.Matches("£[0-9]", home.Words("cover"));
        Assert.Contains("could take this job beyond this book", home.Words("money"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_it_is_not_known_the_range_stays_and_the_warning_with_it()
    {
        var home = Home.Given("home: {nation: england}\n" + Moves);

        Assert.False(home.Plan.IsBeyond);
        Assert.Matches("£[0-9]", home.Words("cover"));
        Assert.Contains("could take this job beyond this book", home.Words("money"), StringComparison.Ordinal);
    }

    private static bool Holds(Condition condition, Home home) => Judge.Of(condition, name => home.Plan.Facts[name]).Truth == Truth.Holds;
}
