using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The ways side by side.</summary>
internal static class WayBlocks
{
    /// <summary>A table of the ways still possible with their figures, then an entry for each.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var possible = bindery.Plan.Ways.Where(w => w.Way.IsPresent).ToList();
        var ruledOut = bindery.Plan.Ways.Where(w => !w.Way.IsPresent).ToList();
        return
        [
            .. Make.Grid(bindery, "ways-caption", ["column-way", "column-cost", "column-finish", "column-off-supply", "column-own-hours"], possible.Select(w => Row(bindery, w))),
            .. possible.Select(w => new Block.Entry(null, 1, bindery.Link(w.Way.Item.Id), [.. bindery.Read(w.Way.Item.About), .. bindery.Read(w.Way.Item.Trades)], Sides.Of(bindery, w.Way))),
            .. Make.Under(bindery, "ways-ruled-out", Make.List(ruledOut.Select(w => RuledOut(bindery, w.Way.Item)))),
        ];
    }

    private static GridRow Row(Bindery bindery, PlannedWay way)
    {
        var name = bindery.Link(way.Way.Item.Id) + (way.Way.Item.Id == bindery.Plan.ChosenWay.Item.Id ? Phrase.Of(bindery.Say("way-chosen")) : Phrase.Empty);
        return way.Figures is { } figures
            ? Make.Row(null, name, bindery.Total(figures.Cost), bindery.Finish(figures.Finish), Phrase.Of(bindery.Ranges.Hours(figures.OffSupplyHours)), Phrase.Of(bindery.Ranges.Hours(figures.HouseholdHours)))
            : Make.Row(null, name, Phrase.Of(bindery.Say("figure-unknown")), Phrase.Of(bindery.Say("figure-unknown")), Phrase.Of(bindery.Say("figure-unknown")), Phrase.Of(bindery.Say("figure-unknown")));
    }

    private static Phrase RuledOut(Bindery bindery, Way way) =>
        bindery.Link(way.Id) + (way.WhenRuledOut.IsEmpty ? Phrase.Empty : Phrase.Of(": ") + bindery.ReadLine(way.WhenRuledOut));
}
