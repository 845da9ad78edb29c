using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Html;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Editions;

/// <summary>The customer's edition: an installer's name on the whole book.</summary>
public sealed class CustomerTests
{
    private static BoundBook Book { get; } = Support.Editions.Bind(Support.Editions.Demo, EditionKind.Customer);

    [Theory]
    [InlineData("index.html", "Rushlight Electrical (an invented firm)")]
    [InlineData("index.html", "<img alt=\"Rushlight Electrical (an invented firm)\" src=\"data:image/svg+xml;base64,")]
    [InlineData("index.html", "Ring us before you sign")]
    [InlineData("scope.html", "not a design, not a quotation, and not a promise on behalf of others")]
    [InlineData("scope.html", "24 December 2026")]
    [InlineData("crew-sheet.html", "The fuse box stays off until the electrician has written down polarity and earth.")]
    [InlineData("crew-sheet.html", "No filling before the jointer releases the hole.")]
    [InlineData("handover-sheet.html", "Abandoned end")]
    [InlineData("terms.html", "what the firm says about cancelling, in full")]
    public void It_says(string page, string words) => Assert.Contains(words, Book.File(page), StringComparison.Ordinal);

    [Fact]
    public void An_own_price_stands_in_it_as_given_and_names_where_it_comes_from()
    {
        Assert.Contains("from £336 to £552, most likely £408", Book.File("scope.html"), StringComparison.Ordinal);
        Assert.Contains("from Rushlight Electrical (an invented firm)", Book.File("how-this-was-worked-out.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Under_a_firms_price_stands_only_what_the_firm_has_priced()
    {
        var scope = Book.File("scope.html");
        var (ours, unpriced, others) = (scope.IndexOf("In our price", StringComparison.Ordinal), scope.IndexOf("Ours, to be priced", StringComparison.Ordinal), scope.IndexOf("Done by others", StringComparison.Ordinal));

        Assert.Contains("#electrician-tails\"", scope[ours..unpriced], StringComparison.Ordinal);
        Assert.DoesNotContain("#building-control-fee\"", scope[ours..unpriced], StringComparison.Ordinal);
        Assert.DoesNotContain("#electrician-standby\"", scope[ours..unpriced], StringComparison.Ordinal);
        Assert.Contains("#electrician-inspection\"", scope[unpriced..others], StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_rests_on_nothing_that_the_customer_has_answered_or_that_the_plan_does_not_take()
    {
        var scope = Book.File("scope.html");
        string[] answeredOrNotTaken = ["Medical equipment", "Stairlift", "Animals in a building", "Notice to cancel", "Voltage of lines nearby"];

        Findings.AreNone(answeredOrNotTaken.Where(w => scope[scope.IndexOf("What this rests on", StringComparison.Ordinal)..].Contains(w, StringComparison.Ordinal)));
    }

    // What the edition may not print may apply, and what may apply is a caution too.
    [Fact]
    public void An_imprint_takes_no_caution_away()
    {
        var (plain, own) = (Support.Editions.Plan(Support.Editions.Demo, EditionKind.Householder), Support.Editions.Plan(Support.Editions.Demo, EditionKind.Customer));

        Findings.AreNone(Present(plain).Except(Present(own)));
        Findings.AreNone(Present(plain).Where(h => Book.Files.All(f => f.Name != h + ".html")));
        Assert.Contains("You never touch, open or move", Book.File("index.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("#ffee00", "#ffffff", 4.5)]
    [InlineData("#101010", "#12181f", 4.5)]
    [InlineData("#777777", "#ffffff", 4.5)]
    [InlineData("#0b4a9e", "#ffffff", 4.5)]
    public void A_colour_is_brought_to_enough_contrast_and_no_further(string colour, string paper, double least)
    {
        var enough = Contrast.Enough(colour, paper, least);

        Assert.True(Contrast.Ratio(enough, paper) >= least);
        Assert.Equal(Contrast.Ratio(colour, paper) >= least, enough == colour);
    }

    private static IEnumerable<string> Present(Plan plan) => plan.Hazards.Where(h => h.Hazard.IsPresent).Select(h => h.Hazard.Item.Id);
}
