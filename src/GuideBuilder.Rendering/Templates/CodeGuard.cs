using System.Text;
using GuideBuilder.Rendering.Markup;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace GuideBuilder.Rendering.Templates;

/// <summary>Finds values that would be written inside a code span or a code block.</summary>
internal static class CodeGuard
{
    private const char Stand = '\uE000';

    /// <summary>A fault for each code span or block of the text that holds a template's braces.</summary>
    internal static IEnumerable<Fault> Check(LocalText text)
    {
        var covered = Cover(text.Words);
        return Dialect.Parse(covered)
            .Descendants()
            .Where(n => IsCode(n) && n.Span.Start >= 0 && covered.AsSpan(n.Span.Start, Math.Min(n.Span.Length, covered.Length - n.Span.Start)).Contains(Stand))
            .Select(n => RenderingFaults.ValueInCode(TemplatePlaces.At(text, n.Span.Start)))
            .ToList();
    }

    private static bool IsCode(MarkdownObject node) => node is CodeInline or CodeBlock;

    // What stands between braces becomes letters of no meaning, one for one, so that offsets stay what they are.
    private static string Cover(string words)
    {
        var covered = new StringBuilder(words);
        for (var start = words.IndexOf("{{", StringComparison.Ordinal); start >= 0;)
        {
            var end = words.IndexOf("}}", start, StringComparison.Ordinal);
            end = end < 0 ? words.Length : end + 2;
            for (var i = start; i < end; i++)
            {
                covered[i] = words[i] == '\n' ? '\n' : Stand;
            }

            start = words.IndexOf("{{", end, StringComparison.Ordinal);
        }

        return covered.ToString();
    }
}
