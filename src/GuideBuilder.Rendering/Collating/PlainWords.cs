using System.Text.RegularExpressions;

namespace GuideBuilder.Rendering.Collating;

/// <summary>The words of a page as they would be read aloud, before anything is filled in.</summary>
internal static partial class PlainWords
{
    /// <summary>The text without templates, tables, links and marks of CommonMark.</summary>
    internal static string Of(LocalText text) => Marks().Replace(Link().Replace(Rows().Replace(Braces().Replace(text.Words, "name"), ""), "$1"), "");

    [GeneratedRegex(@"\{\{.*?\}\}", RegexOptions.Singleline)]
    private static partial Regex Braces();

    [GeneratedRegex(@"^\|.*$", RegexOptions.Multiline)]
    private static partial Regex Rows();

    [GeneratedRegex(@"\[([^\]]*)\]\([^)]*\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[*#\\]|^name$", RegexOptions.Multiline)]
    private static partial Regex Marks();
}
