using System.Text.RegularExpressions;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>What is said of a cable that nobody has seen yet.</summary>
public sealed partial class CableTests
{
    public static TheoryData<string> Homes => ["answers/avebury-close.yaml", "answers/mostly-unknown.yaml"];

    [Theory]
    [MemberData(nameof(Homes))]
    public void No_page_sends_the_household_beside_or_beneath_a_cable(string answers)
    {
        var home = Home.At(answers);

        Findings.AreNone(from page in home.PagesOfThisHome
                         from line in home.Lines(page)
                         from sentence in SentenceEnd().Split(line)
                         where Sends(sentence)
                         select $"{page}: {sentence}");
    }

    [Theory]
    [InlineData("Only dig gently beside the cable.")]
    [InlineData("Dig gently beside it, and do not use a pick.")]
    [InlineData("If no crew is there, clear the soil round the cable by hand.")]
    [InlineData("You may scrape along the cable, but not with metal.")]
    [InlineData("Nobody is there, so dig under the cable.")]
    [InlineData("Lift the tiles and reach beneath the cable.")]
    [InlineData("Do not hurry, and dig beside the cable.")]
    [InlineData("Never be alone when you dig along a cable.")]
    public void A_sentence_that_does_so_is_found(string sentence) => Assert.True(Sends(sentence));

    [Theory]
    [InlineData("Do not dig beside it or under it.")]
    [InlineData("Nobody goes beside or beneath the cable unless the operator has named them.")]
    [InlineData("Uncovering the cable, or digging beside or beneath it, is not your task.")]
    [InlineData("The network operator uncovers the cable, and its crew digs under it.")]
    [InlineData("Never reach round the cable.")]
    public void One_that_forbids_it_or_speaks_of_the_crew_is_not(string sentence) => Assert.False(Sends(sentence));

    [Theory]
    [MemberData(nameof(Homes))]
    public void The_cable_has_neither_one_line_nor_one_depth_and_the_hole_is_counted_all_the_same(string answers)
    {
        var home = Home.At(answers);
        var sheet = home.Words("ground-sheet");

        Assert.Contains("to count the spoil, not to dig by", sheet, StringComparison.Ordinal);
        Assert.Contains("It can be anywhere in the hole, at any depth", sheet, StringComparison.Ordinal);
        Assert.NotNull(home.Plan.Ground);
        Assert.DoesNotMatch(@"[Tt]he cable (lies|is) (at a depth of )?[0-9]", sheet);
    }

    // The word that forbids must stand directly before the deed, or say of the deed that it is not theirs; or a company does it.
    private static bool Sends(string sentence) => Near().IsMatch(sentence) && !Forbidden().IsMatch(sentence) && !NotYours().IsMatch(sentence) && !ByTheCompany().IsMatch(sentence);

    [GeneratedRegex(@"(?<=[.!?:])\s")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(Deed + @"\b[^.]*\b(beside|beneath|under|underneath|round|around|along|next to)\b[^.]*\b(it|the cable|a cable|any cable)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Near();

    [GeneratedRegex(@"^\W*(\w+ ){0,2}(do not|never|nobody|no one|not to|must not|may not) (\w+ly )?" + Deed + @"\b(?![^.]*\b(but|except|and then|so) )", RegexOptions.IgnoreCase)]
    private static partial Regex Forbidden();

    [GeneratedRegex(Deed + @"\b[^.]*\bis not (your|yours|for you|a task)\b", RegexOptions.IgnoreCase)]
    private static partial Regex NotYours();

    [GeneratedRegex(@"^\W*(the (network )?operator|the crew|the jointer|a trained contractor|only (a|the|those) (contractor|operator|trained))\b", RegexOptions.IgnoreCase)]
    private static partial Regex ByTheCompany();

    private const string Deed = @"(dig|digs|digging|reach|reaches|goes?|scrapes?|clears?(?! space)|uncovers?|uncovering)";
}
