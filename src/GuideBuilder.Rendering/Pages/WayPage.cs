using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The home page of a way: what it is, what it trades, and what it would come to.</summary>
internal static class WayPage
{
    internal static ImmutableArray<Block> Of(Bindery bindery, PlannedWay planned)
    {
        var way = planned.Way.Item;
        return
        [
            new Block.Entry(null, 1, Phrase.Empty, bindery.Read(way.About), [.. Figures(bindery, planned), .. Sides.Of(bindery, planned.Way)]),
            .. Make.Under(bindery, "way-trades", way.Trades),
            .. Make.Under(bindery, "way-when-ruled-out", way.WhenRuledOut),
            .. planned.Figures is { } figures ? Make.Under(bindery, "way-consents", Make.List(figures.Consents.Select(bindery.Link))) : [],
            .. planned.Figures is { } more ? Make.Under(bindery, "way-hazards", Make.List(more.Hazards.Select(bindery.Link))) : [],
        ];
    }

    private static ImmutableArray<SideLine> Figures(Bindery bindery, PlannedWay planned) => planned.Figures is not { } figures ? [] :
    [
        Sides.Line(bindery, "left-cost", bindery.Total(figures.Cost)),
        Sides.Line(bindery, "left-finishes", bindery.Finish(figures.Finish)),
        Sides.Line(bindery, "left-off-supply", Phrase.Of(bindery.Ranges.Hours(figures.OffSupplyHours))),
        Sides.Line(bindery, "left-own-hours", Phrase.Of(bindery.Ranges.Hours(Wording.Figures.Whole(figures.HouseholdHours)))),
    ];
}
