using System.Text.RegularExpressions;
using GuideBuilder.Tests.Architecture;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading;

public sealed partial class FaultListTests
{
    private static readonly string[] Factories = [.. Texts("src/GuideBuilder.Reading/Faults")];
    private static readonly HashSet<string> Tested = [.. Texts("tests/GuideBuilder.Tests/Reading").SelectMany(Codes)];

    [Fact]
    public void Every_fault_of_reading_is_asked_for_by_a_test() =>
        Findings.AreNone(Factories.SelectMany(Codes).Distinct(StringComparer.Ordinal).Where(code => !Tested.Contains(code)));

    [Fact]
    public void Every_fault_of_reading_has_an_example_beside_it() =>
        Findings.AreNone(Factories.SelectMany(text => Factory().Matches(text)).Where(m => !m.Value.Contains("Example: ", StringComparison.Ordinal)).Select(m => m.Groups["code"].Value));

    private static IEnumerable<string> Texts(string folder) => SourceFile.All.Where(f => f.Name.StartsWith(folder, StringComparison.Ordinal)).Select(f => f.Text);

    private static IEnumerable<string> Codes(string text) => Code().Matches(text).Select(m => m.Value);

    [GeneratedRegex(@"HB1[0-9]{3}")]
    private static partial Regex Code();

    [GeneratedRegex(@"/// <summary>[^\n]*\n +public static Fault [^""]*""(?<code>HB1[0-9]{3})""")]
    private static partial Regex Factory();
}
