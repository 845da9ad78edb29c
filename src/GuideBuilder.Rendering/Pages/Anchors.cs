namespace GuideBuilder.Rendering.Pages;

/// <summary>Walks the blocks of a page.</summary>
internal static class Anchors
{
    /// <summary>The anchors of a block and of those inside it, in reading order.</summary>
    internal static IEnumerable<string> Of(Block block) => Own(block).Concat(Inside(block).SelectMany(Of));

    /// <summary>The blocks directly inside a block, in reading order.</summary>
    internal static IEnumerable<Block> Inside(Block block) => block switch
    {
        Block.Listing listing => listing.Items.SelectMany(i => i),
        Block.Definitions definitions => definitions.Items.SelectMany(d => d.Said),
        Block.Quotation quotation => quotation.Inside,
        Block.Entry entry => entry.Text,
        Block.DangerPanel panel => panel.Text,
        Block.Sheet sheet => sheet.Inside,
        _ => [],
    };

    private static IEnumerable<string> Own(Block block) => block switch
    {
        Block.Heading { Anchor: { } anchor } => [anchor],
        Block.Entry { Anchor: { } anchor } => [anchor],
        Block.DangerPanel { Anchor: { } anchor } => [anchor],
        Block.Drawing drawing => [drawing.Id],
        Block.Definitions definitions => definitions.Items.Select(d => d.Anchor).OfType<string>(),
        Block.Grid grid => grid.Rows.Select(r => r.Anchor).OfType<string>(),
        Block.Ticks ticks => ticks.Boxes.Select(b => b.Id),
        _ => [],
    };
}
