namespace GuideBuilder.Rendering.Pages;

/// <summary>The words of a page, without their looks: what the index searches.</summary>
internal static class PlainText
{
    /// <summary>The title and every word on the page, a line each.</summary>
    internal static string Of(Page page) => string.Join('\n', page.Blocks.SelectMany(Of).Prepend(page.Title).Select(p => p.PlainWords));

    private static IEnumerable<Phrase> Of(Block block) => Own(block).Concat(Anchors.Inside(block).SelectMany(Of));

    private static IEnumerable<Phrase> Own(Block block) => block switch
    {
        Block.Prose prose => [prose.Words],
        Block.Heading heading => [heading.Words],
        Block.Entry entry => entry.Lines.Select(l => l.Says).Prepend(entry.Title),
        Block.DangerPanel panel => [panel.Title],
        Block.Definitions definitions => definitions.Items.Select(d => d.Term),
        Block.Grid grid => grid.Rows.SelectMany(r => r.Cells).Prepend(grid.Caption),
        Block.Ticks ticks => ticks.Boxes.Select(b => b.Task),
        Block.Drawing drawing => [Phrase.Of(drawing.InWords)],
        _ => [],
    };
}
