using System.Globalization;
using System.Text.RegularExpressions;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

/// <summary>Contrast after WCAG 2.2 (relative luminance and contrast ratio), compared without rounding.</summary>
public sealed partial class ContrastTests
{
    private const double ForText = 4.5;
    private const double ForMarks = 3;

    private static readonly string Css = File.ReadAllText(Repository.At("content/look/stylesheet.css"));

    public static TheoryData<string, string, double> Pairs => new()
    {
        { "ink", "paper", ForText }, { "soft", "paper", ForText }, { "link", "paper", ForText }, { "ink", "shade", ForText }, { "link", "shade", ForText },
        { "danger-word", "danger", ForText }, { "warning-word", "warning", ForText }, { "caution-word", "caution", ForText }, { "notice-word", "notice", ForText },
        { "rule", "paper", ForMarks }, { "rule", "shade", ForMarks },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Every_pair_of_colours_that_meets_can_be_told_apart_in_light_dark_and_print(string over, string under, double least)
    {
        foreach (var scheme in Schemes())
        {
            var ratio = Ratio(scheme[over], scheme[under]);
            Assert.True(ratio >= least, FormattableString.Invariant($"{over} on {under}: {ratio:0.000}"));
        }
    }

    [Theory]
    [InlineData("#000000", "#ffffff", 21.00)]
    [InlineData("#767676", "#ffffff", 4.5422)]
    [InlineData("#777777", "#ffffff", 4.4781)]
    [InlineData("#0000ff", "#ff0000", 2.1489)]
    public void Ratios_are_those_of_the_definition(string over, string under, double ratio) => Assert.Equal(ratio, Ratio(over, under), 4);

    [Fact]
    public void Colours_stand_only_where_they_are_named() =>
        Assert.All(Colour().Matches(RootBlock().Replace(Css, "")).Select(m => m.Value), c => Assert.Equal("#000000", c));

    private static List<Dictionary<string, string>> Schemes()
    {
        var blocks = RootBlock().Matches(Css).Select(m => Token().Matches(m.Value).ToDictionary(t => t.Groups[1].Value, t => t.Groups[2].Value)).ToList();
        Assert.Equal(5, blocks.Count);
        Assert.Equal(blocks[2], blocks[3]);
        return [.. blocks.Select(b => blocks[0].Concat(b).GroupBy(p => p.Key).ToDictionary(g => g.Key, g => g.Last().Value))];
    }

    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int at)
        {
            var c = int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    [GeneratedRegex(@":root[^ {]* \{[^}]*\}")]
    private static partial Regex RootBlock();

    [GeneratedRegex(@"--([a-z-]+): (#[0-9a-f]{6});")]
    private static partial Regex Token();

    [GeneratedRegex(@"#[0-9a-fA-F]{3,8}\b")]
    private static partial Regex Colour();
}
