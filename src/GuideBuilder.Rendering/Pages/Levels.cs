namespace GuideBuilder.Rendering.Pages;

/// <summary>Lowers headings, so that what the program makes stands under the heading that an editor wrote above it.</summary>
internal static class Levels
{
    /// <summary>The same blocks, their headings so many levels lower.</summary>
    internal static ImmutableArray<Block> Lower(ImmutableArray<Block> blocks, int by) => by == 0 ? blocks : [.. blocks.Select(b => Lower(b, by))];

    private static Block Lower(Block block, int by) => block switch
    {
        Block.Heading heading => heading with { Level = heading.Level + by },
        Block.Entry entry => entry with { Level = entry.Level + by, Text = Lower(entry.Text, by) },
        Block.DangerPanel panel => panel with { Level = panel.Level + by, Text = Lower(panel.Text, by) },
        Block.Sheet sheet => sheet with { Inside = Lower(sheet.Inside, by) },
        Block.Listing listing => listing with { Items = [.. listing.Items.Select(i => Lower(i, by))] },
        _ => block,
    };
}
