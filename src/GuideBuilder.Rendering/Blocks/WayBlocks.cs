using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The ways side by side.</summary>
internal static class WayBlocks
{
    /// <summary>Why the chosen way, a table of the ways still possible with their figures and one with their dangers, then an entry for each.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var possible = bindery.Plan.Ways.Where(w => w.Way.IsPresent).ToList();
        var ruledOut = bindery.Plan.Ways.Where(w => !w.Way.IsPresent).ToList();
        var shared = Shared(possible);
        return
        [
            .. Make.Under(bindery, "way-why-head", WayReasons.Of(bindery)),
            .. Make.Grid(bindery, "ways-caption", ["column-way", "column-cost", "column-finish", "column-off-supply", "column-own-hours"], possible.Select(w => Row(bindery, w))),
            .. Make.Grid(bindery, "ways-dangers-caption", ["column-way", "column-heaviest", "column-only-here", "column-consents"], possible.Select(w => Dangers(bindery, w, possible, shared))),
            .. shared.Count == 0 ? ImmutableArray<Block>.Empty : [new Block.Prose(bindery.Labels.Compose("ways-consents-shared", ("consents", Phrase.Join(", ", shared.Select(bindery.Link)))))],
            .. possible.Select(w => new Block.Entry(null, 1, bindery.Link(w.Way.Item.Id), [.. bindery.Read(w.Way.Item.About), .. bindery.Read(w.Way.Item.Trades)], Sides.Of(bindery, w.Way))),
            .. Make.Under(bindery, "ways-ruled-out", Make.List(ruledOut.Select(w => RuledOut(bindery, w.Way.Item)))),
        ];
    }

    private static GridRow Row(Bindery bindery, PlannedWay way)
    {
        var unknown = Phrase.Of(bindery.Say("figure-unknown"));
        return way.Figures is { } figures
            ? Make.Row(null, Name(bindery, way), bindery.Total(figures.Cost), bindery.Finish(figures.Finish), Hours(bindery, figures.OffSupplyHours), Hours(bindery, figures.HouseholdHours))
            : Make.Row(null, Name(bindery, way), unknown, unknown, unknown, unknown);
    }

    private static GridRow Dangers(Bindery bindery, PlannedWay way, List<PlannedWay> all, List<string> shared)
    {
        var none = Phrase.Of(bindery.Say("answer-none"));
        var here = way.Figures?.Hazards ?? [];
        var elsewhere = all.Where(w => w != way).SelectMany(w => w.Figures?.Hazards ?? []).ToHashSet(StringComparer.Ordinal);
        var worst = Make.WorstFirst(bindery.Plan.Hazards).FirstOrDefault(h => here.Contains(h.Hazard.Item.Id));
        Phrase Linked(IEnumerable<string> ids) => Phrase.Join(", ", ids.Select(bindery.Link)) is { IsEmpty: false } said ? said : none;
        return Make.Row(
            null,
            Name(bindery, way),
            worst is null ? none : bindery.Link(worst.Hazard.Item.Id),
            all.Count == 1 ? none : Linked(here.Where(h => !elsewhere.Contains(h))),
            Linked((way.Figures?.Consents ?? []).Where(c => !shared.Contains(c))));
    }

    // What every way needs is said once; with one way there is nothing to share.
    private static List<string> Shared(List<PlannedWay> possible)
    {
        var worked = possible.Select(w => w.Figures).OfType<WayFigures>().ToList();
        return worked.Count < 2 ? [] : [.. worked[0].Consents.Where(c => worked.All(w => w.Consents.Contains(c)))];
    }

    private static Phrase Name(Bindery bindery, PlannedWay way) =>
        bindery.Link(way.Way.Item.Id)
        + (way.Way.Because.Truth == Truth.Fails ? Phrase.Of(bindery.Say("way-not-wished")) : Phrase.Empty)
        + (way.Way.Item.Id == bindery.Plan.ChosenWay.Item.Id ? Phrase.Of(bindery.Say("way-chosen")) : Phrase.Empty);

    private static Phrase Hours(Bindery bindery, ThreePoint hours) => Phrase.Of(bindery.Ranges.Hours(Figures.Whole(hours)));

    private static Phrase RuledOut(Bindery bindery, Way way) =>
        bindery.Link(way.Id) + (way.WhenRuledOut.IsEmpty ? Phrase.Empty : Phrase.Of(": ") + bindery.ReadLine(way.WhenRuledOut));
}
