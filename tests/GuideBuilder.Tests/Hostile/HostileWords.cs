using System.Text.RegularExpressions;

namespace GuideBuilder.Tests.Support;

/// <summary>Words of which each tries to be more than words: those of Hostile/words.txt.</summary>
internal static partial class HostileWords
{
    /// <summary>All of them, in written order.</summary>
    public static string[] All { get; } = [.. File.ReadAllLines(Repository.At("tests/GuideBuilder.Tests/Hostile/words.txt")).Where(l => l.Length > 0 && l[0] != '#').Select(l => Meant(l[(l.IndexOf('\t', StringComparison.Ordinal) + 1)..]))];

    /// <summary>The words in one line.</summary>
    public static string InOneLine(string words) => LineEnds().Replace(words, " ");

    /// <summary>What a reader sees of words: runs of spaces and line ends count as one space.</summary>
    public static string Seen(string words) => Spaces().Replace(words, " ").Trim(' ');

    /// <summary>The words as YAML in double quotes, line ends, tabs, quotes and backslashes as escapes.</summary>
    public static string Yaml(string words) => "\"" + string.Concat(words.Select(c => c switch
    {
        '"' => "\\\"",
        '\\' => "\\\\",
        '\n' => "\\n",
        '\r' => "\\r",
        '\t' => "\\t",
        _ => c.ToString(),
    })) + "\"";

    private static string Meant(string line) => Escape().Replace(line, m => m.Value[1] switch
    {
        'n' => "\n",
        'r' => "\r",
        't' => "\t",
        'u' => ((char)Convert.ToInt32(m.Value[2..], 16)).ToString(),
        _ => "\\",
    });

    [GeneratedRegex(@"\\(?:u[0-9A-F]{4}|[nrt\\])")]
    private static partial Regex Escape();

    [GeneratedRegex(@"[\r\n]+")]
    private static partial Regex LineEnds();

    [GeneratedRegex(@"[ \t\r\n]+")]
    private static partial Regex Spaces();
}
