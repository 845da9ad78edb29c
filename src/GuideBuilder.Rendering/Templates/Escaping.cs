using System.Text;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Makes any words safe to stand in another language.</summary>
internal static class Escaping
{
    /// <summary>Words as one line of CommonMark text that reads exactly as the words: line breaks become spaces, and a backslash stands before every ASCII punctuation character. A space at either end is written as an entity, since CommonMark drops it or takes it for an indent.</summary>
    internal static string CommonMark(string words)
    {
        var line = words.ReplaceLineEndings(" ");
        var written = new StringBuilder(line.Length + 16);
        for (var i = 0; i < line.Length; i++)
        {
            var atEnd = i == 0 || i == line.Length - 1;
            _ = line[i] switch
            {
                ' ' when atEnd => written.Append("&#32;"),
                '\t' => written.Append("&#9;"),
                var c when IsAsciiPunctuation(c) => written.Append('\\').Append(c),
                var c => written.Append(c),
            };
        }

        return written.ToString();
    }

    /// <summary>Words as HTML text or as a quoted attribute value.</summary>
    internal static string Html(string words)
    {
        var written = new StringBuilder(words.Length + 16);
        foreach (var c in words)
        {
            _ = c switch
            {
                '&' => written.Append("&amp;"),
                '<' => written.Append("&lt;"),
                '>' => written.Append("&gt;"),
                '"' => written.Append("&quot;"),
                '\'' => written.Append("&#39;"),
                _ => written.Append(c),
            };
        }

        return written.ToString();
    }

    private static bool IsAsciiPunctuation(char c) => c is (>= '!' and <= '/') or (>= ':' and <= '@') or (>= '[' and <= '`') or (>= '{' and <= '~');
}
