using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>No page says of an electrical or ground condition that it is safe, compliant or approved, or that it passes. Where one of these words stands at all, the list beside this file has the words around it and why they may stay.</summary>
public sealed partial class WordsOfApprovalTests
{
    private static readonly (string Words, string Reason)[] Allowed =
    [
        .. from line in File.ReadLines(Repository.At("tests/GuideBuilder.Tests/Cases/words-of-approval.txt"))
           where line.Length > 0 && line[0] != '#'
           let parts = line.Split(" | ")
           select (parts[0], parts[1]),
    ];

    [Theory]
    [InlineData("answers/avebury-close.yaml")]
    [InlineData("answers/mostly-unknown.yaml")]
    public void No_page_gives_its_blessing(string answers)
    {
        var home = Home.At(answers);

        Findings.AreNone(
            from page in home.Made
            let words = Words(page)
            from Match found in Blessing().Matches(words)
            where !Allowed.Any(a => Around(words, found, a.Words))
            select $"{page.Id}: …{words[Math.Max(0, found.Index - 60)..Math.Min(words.Length, found.Index + 60)]}…");
    }

    [Fact]
    public void Each_exception_says_why() => Findings.AreNone(from allowed in Allowed where !Blessing().IsMatch(allowed.Words) || allowed.Reason.Length == 0 select allowed.Words);

    [Fact]
    public void The_test_sees_such_a_word() => Assert.Matches(Blessing(), "This hole is safe.");

    // The words of a page in one line, those of its drawings too.
    private static string Words(Page page) => string.Join(
        ' ',
        page.Blocks.SelectMany(Drawings).SelectMany(d => d.Picture.Marks.OfType<PictureMark.Words>()).Select(w => w.Text).Prepend(PlainText.Of(page))
            .SelectMany(w => w.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

    private static IEnumerable<Block.Drawing> Drawings(Block block) => block is Block.Drawing drawing ? [drawing] : Anchors.Inside(block).SelectMany(Drawings);

    // The words of the list must stand over the word that was found, not merely somewhere on the page.
    private static bool Around(string words, Match found, string allowed)
    {
        for (var at = words.IndexOf(allowed, StringComparison.Ordinal); at >= 0; at = words.IndexOf(allowed, at + 1, StringComparison.Ordinal))
        {
            if (at <= found.Index && at + allowed.Length >= found.Index + found.Length)
            {
                return true;
            }
        }

        return false;
    }

    [GeneratedRegex(@"\b(safe|safely|compliant|complies|approved|pass|passes|passed|passing)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Blessing();
}
