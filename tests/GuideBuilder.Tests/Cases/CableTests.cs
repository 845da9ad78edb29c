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
                         from sentence in SentenceEnd().Split(home.Words(page))
                         where Near().IsMatch(sentence) && !Forbidden().IsMatch(sentence)
                         select $"{page}: {sentence}");
    }

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

    [GeneratedRegex(@"(?<=[.!?])\s")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"\b([Dd]ig|[Dd]igging|[Rr]each|[Gg]o|[Ss]crape|[Cc]lear)\b[^.]*\b(beside|beneath|under|round|along)\b (it|the cable|a cable|any cable)")]
    private static partial Regex Near();

    [GeneratedRegex(@"\b([Nn]ot|[Nn]obody|[Nn]ever|[Nn]o|[Oo]nly|[Tt]he operator|crew|is not)\b")]
    private static partial Regex Forbidden();
}
