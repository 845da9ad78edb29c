using Markdig;
using Markdig.Syntax;

namespace GuideBuilder.Rendering.Markup;

/// <summary>The CommonMark that texts are written in: pipe tables besides, no raw HTML, no attributes, no identifiers made from headings.</summary>
internal static class Dialect
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().UsePreciseSourceLocation().Build();

    /// <summary>The tree of a text. Nesting beyond what the library reads throws <see cref="ArgumentException"/>.</summary>
    internal static MarkdownDocument Parse(string words) => Markdown.Parse(words, Pipeline);
}
