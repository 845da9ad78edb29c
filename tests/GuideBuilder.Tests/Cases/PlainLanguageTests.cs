using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Rendering.Pages;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>Whether the pages for the household can be read by many.</summary>
public sealed partial class PlainLanguageTests
{
    private const double HighestGrade = 8;
    private const int FewestWords = 100;
    private const int ShortestLine = 5;

    // Pages of law and sources, sheets for trades, and pages that the program fills with tables.
    private static readonly string[] NotForReading =
    [
        "consents-and-certificates", "sources-page", "glossary-page", "index-page", "how-this-was-worked-out", "electrical-sheet", "ground-sheet", "door-sheet", "log-sheet", "operator-call-sheet",
    ];

    private static readonly Regex Names = new(string.Join('|', Content.Guidance.Nations.SelectMany(n => n.Bodies.Values).Select(b => b.Words)
        .Concat(Content.Guidance.Terms.SelectMany(t => t.Also.Prepend(t.Word)).Select(t => t.Words))
        .Distinct(StringComparer.Ordinal)
        .OrderByDescending(w => w.Length)
        .Select(w => @"\b" + Regex.Escape(w) + @"s?\b")), RegexOptions.IgnoreCase);

    public static TheoryData<string> Homes => ["answers/avebury-close.yaml", "answers/mostly-unknown.yaml"];

    [Theory]
    [MemberData(nameof(Homes))]
    public void Household_pages_read_at_grade_eight_or_lower(string answers)
    {
        var hard = from page in Home.At(answers).Made
                   where !NotForReading.Contains(page.Id) && page.Kind != PageKind.Letter
                   let count = ReadingGrade.Count(string.Join('\n', Lines(page)))
                   where count.Words >= FewestWords
                   let grade = ReadingGrade.Of(count.Words, count.Sentences, count.Syllables)
                   where grade > HighestGrade
                   select FormattableString.Invariant($"{page.Id}: {grade:0.0} ({count.Words} words, {count.Sentences} sentences, {count.Syllables} syllables)");

        Findings.AreNone(hard);
    }

    [Theory]
    [MemberData(nameof(Homes))]
    public void Household_pages_have_no_signs_of_arithmetic(string answers)
    {
        var home = Home.At(answers);

        Findings.AreNone(home.Pages.Except(NotForReading).Where(p => Sign().IsMatch(home.Words(p))).Select(p => $"{p}: {Sign().Match(home.Words(p)).Value}"));
    }

    private static IEnumerable<string> Lines(Page page) =>
        page.Blocks.SelectMany(Prose).Select(w => Names.Replace(w, "name")).Where(w => ReadingGrade.Count(w).Words >= ShortestLine);

    private static IEnumerable<string> Prose(Block block) =>
        (block is Block.Prose prose ? [prose.Words.PlainWords] : Array.Empty<string>()).Concat(Anchors.Inside(block).SelectMany(Prose));

    [GeneratedRegex(".{0,20}(≥|≤|×|~|m³).{0,20}")]
    private static partial Regex Sign();
}
