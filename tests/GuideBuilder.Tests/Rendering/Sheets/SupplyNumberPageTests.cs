using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Rendering.Sheets;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Rendering.Sheets;

/// <summary>What the supply number says, and where it is kept back. Every number is a published sample or made up.</summary>
public sealed class SupplyNumberPageTests
{
    [Theory]
    [InlineData("1312345678907", "Area 13: Merseyside, Cheshire and North Wales")]
    [InlineData("2499999999991", "independent networks")]
    [InlineData("2499999999991", "Independent Power Networks")]
    [InlineData("9912345678906", "No network with these first two digits is known to us")]
    [InlineData("8112345678907", "Copy the number again")]
    [InlineData("8123456789", "as long as a gas number")]
    [InlineData("1312345678908", "Its last digit does not follow")]
    public void The_number_is_taken_apart(string number, string says) => Assert.Contains(says, Words(number, EditionKind.Householder), StringComparison.Ordinal);

    [Theory]
    [InlineData(EditionKind.Public)]
    [InlineData(EditionKind.Neighbour)]
    public void Other_editions_keep_it_back(EditionKind edition)
    {
        var words = Words("1312345678907", edition);

        Assert.DoesNotContain("13", words, StringComparison.Ordinal);
        Assert.Contains("not printed in this edition", words, StringComparison.Ordinal);
    }

    private static string Words(string number, EditionKind edition)
    {
        var home = Home.Given($"home: {{nation: england, supply-number: \"{number}\"}}\nwish: {{moves: [meter], reason: [tidy]}}\n");
        var plan = home.Plan with { Occasion = home.Plan.Occasion with { Edition = edition } };
        var blocks = SupplyBlock.Of(Handbook.Open(plan, Content.Guidance, new FaultList()));
        return PlainText.Of(new Page("supply", PageKind.Chapter, "", Phrase.Empty, blocks));
    }
}
