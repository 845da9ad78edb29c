namespace GuideBuilder.Cli.Printing;

/// <summary>Words of a person on the console: a control character, or a mark that reorders text, must not reach the terminal.</summary>
internal static class OneLine
{
    /// <summary>The words with a dot for each such character.</summary>
    internal static string Of(string words) => words.Any(IsUnfit) ? string.Concat(words.Select(c => IsUnfit(c) ? '·' : c)) : words;

    private static bool IsUnfit(char c) => char.IsControl(c) || c is '\u061C' or '\u200E' or '\u200F' or (>= '\u2028' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
