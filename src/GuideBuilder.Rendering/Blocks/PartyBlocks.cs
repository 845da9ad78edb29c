using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Who takes part and whose each thing is.</summary>
internal static class PartyBlocks
{
    /// <summary>An entry for each party.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery) =>
    [
        .. bindery.Plan.Parties.Where(p => p.IsPresent).Select(p => new Block.Entry(
            null,
            1,
            bindery.Link(p.Item.Id),
            bindery.Read(p.Item.Does),
            Sides.Of(bindery, p))),
    ];

    /// <summary>A table of what each party owns and will not do.</summary>
    internal static ImmutableArray<Block> Owners(Bindery bindery) => Make.Grid(
        bindery,
        "owners-caption",
        ["column-party", "column-owns", "column-will-not"],
        bindery.Plan.Parties.Where(p => p.IsPresent).Select(p => Make.Row(null, bindery.Link(p.Item.Id), bindery.ReadLine(p.Item.Owns), bindery.ReadLine(p.Item.WillNotDo))));
}
