using System.Collections.Frozen;
using GuideBuilder.Model;

namespace GuideBuilder.Tests.Support;

/// <summary>The real labels and look of the repository, read without the Reading stage.</summary>
internal static class Labels
{
    /// <summary>Every label of content/labels.yaml.</summary>
    public static FrozenDictionary<string, Label> Real { get; } = Read().ToFrozenDictionary(l => l.Id, StringComparer.Ordinal);

    /// <summary>The files of content/look but the list of chapters.</summary>
    public static IEnumerable<KeyValuePair<string, string>> LookFiles { get; } =
        [.. new[] { "frame.html", "stylesheet.css", "ticks.js" }.Select(n => KeyValuePair.Create(n, File.ReadAllText(Repository.At($"content/look/{n}"))))];

    private static IEnumerable<Label> Read()
    {
        string? id = null, one = null;
        foreach (var line in File.ReadLines(Repository.At("content/labels.yaml")))
        {
            if (line.StartsWith("- id: ", StringComparison.Ordinal))
            {
                id = line[6..];
            }
            else if (line.StartsWith("  one: ", StringComparison.Ordinal))
            {
                one = Plain(line[7..]);
            }
            else if (line.StartsWith("  other: ", StringComparison.Ordinal))
            {
                yield return new(id!, Sample.Text(one!), Sample.Text(Plain(line[9..])));
            }
        }
    }

    private static string Plain(string words) => words.StartsWith('"') ? words[1..^1] : words;
}
