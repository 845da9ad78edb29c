using System.CommandLine;
using System.Globalization;

namespace GuideBuilder.Cli;

/// <summary>Answers the scripts that complete words in a shell: <c>guidebuilder '[suggest:17]' 'guidebuilder check'</c> names the words that may stand at that place of the line, a line each.</summary>
internal static class Completing
{
    private const string Opening = "[suggest:";

    /// <summary>The place of the cursor in the line, if that is what the arguments ask; else null.</summary>
    internal static int? PlaceIn(string[] args) =>
        args is [var first, _] && first.StartsWith(Opening, StringComparison.Ordinal) && first.EndsWith(']')
        && int.TryParse(first[Opening.Length..^1], NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : null;

    /// <summary>The words, in ordinal order, without the parser's older spellings of help (/?).</summary>
    internal static IEnumerable<string> At(RootCommand root, string line, int place) =>
        root.Parse(line, new ParserConfiguration { ResponseFileTokenReplacer = null })
            .GetCompletions(Math.Min(place, line.Length))
            .Select(c => c.Label)
            .Where(word => !word.StartsWith('/'))
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);

    /// <summary>Prints them.</summary>
    internal static Exit Print(RootCommand root, string line, int place)
    {
        foreach (var word in At(root, line, place))
        {
            Console.Out.WriteLine(word);
        }

        return Exit.Done;
    }
}
