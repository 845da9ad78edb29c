using System.Text;
using GuideBuilder.Rendering.Templates;

namespace GuideBuilder.Rendering.Wording;

/// <summary>Words in another language than their page's, marked inside a string until they are written: a fixed phrase that nobody has translated, a body's own name.</summary>
internal static class Tongues
{
    private const char Begin = '\uF8F0';
    private const char Told = '\uF8F1';
    private const char End = '\uF8F2';
    private const int LongestTag = 35;

    /// <summary>The words, marked with their language where that is not the page's.</summary>
    internal static string Mark(LocalText text, string page) => text.Language == page || text.IsEmpty ? text.Words : $"{Begin}{text.Language}{Told}{text.Words}{End}";

    /// <summary>The words without marks, for attributes and data.</summary>
    internal static string Plain(string words) => words.Contains(Begin, StringComparison.Ordinal) ? Write(words, w => w, _ => "", "") : words;

    /// <summary>The words as HTML, what is marked in an element with its language.</summary>
    internal static string Html(string words) => words.Contains(Begin, StringComparison.Ordinal) ? Write(words, Escaping.Html, tag => $"<span lang=\"{tag}\">", "</span>") : Escaping.Html(words);

    // A mark that is not whole, which only a person's own words can hold, is a character like any other.
    private static string Write(string words, Func<string, string> escape, Func<string, string> open, string close)
    {
        var (written, depth, from) = (new StringBuilder(words.Length + 32), 0, 0);
        for (var i = 0; i < words.Length; i++)
        {
            if (words[i] == Begin && TagAt(words, i) is { } tag)
            {
                written.Append(escape(words[from..i])).Append(open(tag));
                (depth, i) = (depth + 1, i + tag.Length + 1);
                from = i + 1;
            }
            else if (words[i] == End && depth > 0)
            {
                written.Append(escape(words[from..i])).Append(close);
                (depth, from) = (depth - 1, i + 1);
            }
        }

        return written.Append(escape(words[from..])).Insert(written.Length, close, depth).ToString();
    }

    private static string? TagAt(string words, int at)
    {
        var end = words.IndexOf(Told, at, Math.Min(words.Length - at, LongestTag + 2));
        return end > at + 1 && words[(at + 1)..end].All(c => c is '-' || char.IsAsciiLetterOrDigit(c)) ? words[(at + 1)..end] : null;
    }
}
