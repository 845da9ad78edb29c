using System.Text;
using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>No emergency number is printed that was not read, on a known day, on the page of the body that answers it.</summary>
public sealed partial class EmergencyNumberTests
{
    private const string Networks = "- id: nie-underground-cables\n  title: Underground cables\n  publisher: NIE Networks\n  year: undated\n  section: safety\n  address: https://www.nienetworks.co.uk/safety/underground-cables\n  mark: read\n  checked: 2026-11-24\n";

    public static TheoryData<string, string, string, string> Mistakes => new()
    {
        { "content/sources.yaml", Networks, Networks.Replace("mark: read", "mark: memory", StringComparison.Ordinal), "HB1099" },
        { "content/sources.yaml", Networks, Networks.Replace("  checked: 2026-11-24\n", "", StringComparison.Ordinal), "HB1099" },
        { "content/guidance.yaml", "gas-emergency: the gas emergency number printed on your gas bill and on the gas meter\n", "gas-emergency: 0800 002 001\n", "HB1098" },
        { "content/guidance.yaml", "network-emergency: \"105\"", "network-emergency: \"106\"", "HB1098" },
        { "content/guidance.yaml", "        - {number: 1800 372 999, source: esbn-severe-weather}\n", "", "HB1098" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_number_that_was_not_read_is_a_fault(string file, string was, string now, string code) =>
        Assert.Contains(GuidanceReader.Read(Guidances.Changed((file, was, now)), "content", Guidances.Today).Faults, f => f.Code == code && f.Severity == Severity.Error && f.Place.Path == "content/guidance.yaml");

    [Fact]
    public void Numbers_stand_with_their_source_and_nowhere_else_in_the_guidance() => Findings.AreNone(
        from file in Guidances.Changed()
        where file.Path is not "content/guidance.yaml" && !file.Path.StartsWith("content/look/", StringComparison.Ordinal)
        from line in Encoding.UTF8.GetString(file.Bytes.Span).Split('\n')
        where !line.Contains("http", StringComparison.Ordinal) && !line.TrimStart().StartsWith('#') && !IsTitle(file.Path, line) && Number().IsMatch(line)
        select $"{file.Path}: {line.Trim()}");

    [Fact]
    public void Such_a_number_is_seen() => Assert.All(["Ring 105.", "ring 0800 111 999 now", "call 1850 20 50 50", "03457 643 643"], w => Assert.Matches(Number(), w));

    [Theory]
    [InlineData("0808 111 999")]
    [InlineData("1850 20 50 50")]
    [InlineData("1850 372 999")]
    public void A_number_that_is_wrong_or_out_of_use_stands_nowhere(string number) =>
        Findings.AreNone(Guidances.Changed().Where(f => Encoding.UTF8.GetString(f.Bytes.Span).Contains(number, StringComparison.Ordinal)).Select(f => f.Path));

    // A publication may have a number in its title.
    private static bool IsTitle(string path, string line) => path == "content/sources.yaml" && line.StartsWith("  title:", StringComparison.Ordinal);

    [GeneratedRegex(@"(?<![\d.£€-])(105|112|999|0\d{3,4} \d{3} \d{3,4}|1[89][05]0( \d{2,3}){2,3})(?![\d:.-]\d|\d| (mm|m|A|kW|days|pages|articles))")]
    private static partial Regex Number();
}
