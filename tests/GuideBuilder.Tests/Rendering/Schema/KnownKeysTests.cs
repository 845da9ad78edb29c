using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Schema;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Schema;

/// <summary>The schema has the keys that are read, and no others: the fault of a wrong key lists those that are.</summary>
public sealed partial class KnownKeysTests
{
    private static readonly JsonNode Properties = JsonNode.Parse(AnswersSchema.Write(Content.Guidance).Span)!["properties"]!;

    [Theory]
    [InlineData("zzzzzzzz: x", "")]
    [InlineData("handbook: {format: 1, id: home, zzzzzzzz: x}", "handbook")]
    [InlineData("papers: [{kind: letter, zzzzzzzz: x}]", "papers")]
    [InlineData("log: [{on: 2026-09-01, what: noted, zzzzzzzz: x}]", "log")]
    public void The_keys_are_those_that_are_read(string line, string section)
    {
        var head = line.StartsWith("handbook", StringComparison.Ordinal) ? "" : "handbook: {format: 1, id: home}\n";
        var fault = Assert.Single(AnswerReader.Read(AnswersFiles.Of($"{head}home: {{nation: england}}\nwish: {{moves: none}}\n{line}\n"), Content.Guidance).Faults);

        Assert.Equal(Name().Matches(fault.Right).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal), In(section).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> In(string section)
    {
        var node = section.Length == 0 ? Properties : (Properties[section]!["items"] ?? Properties[section]!)["properties"]!;
        return node.AsObject().Select(p => p.Key);
    }

    [GeneratedRegex("`([a-z-]+)`")]
    private static partial Regex Name();
}
