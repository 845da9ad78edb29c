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
            .. Table(bindery, "ways-caption", possible, Figured(bindery)),
            .. Table(bindery, "ways-dangers-caption", possible, Dangers(bindery, possible, shared)),
            .. shared.Count == 0 ? ImmutableArray<Block>.Empty : [new Block.Prose(bindery.Labels.Compose("ways-consents-shared", ("consents", Phrase.Join(", ", shared.Select(bindery.Link)))))],
            .. possible.Select(w => new Block.Entry(null, 1, bindery.Link(w.Way.Item.Id), [.. bindery.Read(w.Way.Item.About), .. bindery.Read(w.Way.Item.Trades)], Sides.Of(bindery, w.Way))),
            .. Make.Under(bindery, "ways-ruled-out", Make.List(ruledOut.Select(w => RuledOut(bindery, w.Way.Item)))),
        ];
    }

    // A column in which all ways are the same is said once, under the table.
    private static ImmutableArray<Block> Table(Bindery bindery, string caption, List<PlannedWay> ways, List<(string Label, Func<PlannedWay, Phrase> Of)> columns)
    {
        bool IsSame((string Label, Func<PlannedWay, Phrase> Of) column) => ways.Count > 1 && ways.Select(w => Words(column.Of(w))).Distinct(StringComparer.Ordinal).Count() == 1;
        var (same, told) = (columns.Where(IsSame).ToList(), columns.Where(c => !IsSame(c)).ToList());
        return
        [
            .. told.Count == 0 ? [] : Make.Grid(bindery, caption, ["column-way", .. told.Select(c => c.Label)], ways.Select(w => Make.Row(null, [Name(bindery, w), .. told.Select(c => c.Of(w))]))),
            .. same.Count == 0 ? ImmutableArray<Block>.Empty : [new Block.Prose(bindery.Labels.Compose("ways-same", ("same", Phrase.Join("; ", same.Select(c => Phrase.Of(bindery.Say(c.Label) + ": ") + c.Of(ways[0]))))))],
        ];
    }

    private static string Words(Phrase phrase) => phrase.PlainWords;

    private static List<(string Label, Func<PlannedWay, Phrase> Of)> Figured(Bindery bindery)
    {
        Func<PlannedWay, Phrase> Of(Func<WayFigures, Phrase> say) => way => way.Figures is { } figures ? say(figures) : Phrase.Of(bindery.Say("figure-unknown"));
        return
        [
            ("column-cost", Of(f => bindery.Total(f.Cost))),
            ("column-finish", Of(f => bindery.Finish(f.Finish))),
            ("column-off-supply", Of(f => Hours(bindery, f.OffSupplyHours))),
            ("column-own-hours", Of(f => Hours(bindery, f.HouseholdHours))),
        ];
    }

    private static List<(string Label, Func<PlannedWay, Phrase> Of)> Dangers(Bindery bindery, List<PlannedWay> all, List<string> shared)
    {
        Phrase Linked(IEnumerable<string> ids) => Phrase.Join(", ", ids.Select(bindery.Link)) is { IsEmpty: false } said ? said : Phrase.Of(bindery.Say("answer-none"));
        ImmutableArray<string> Here(PlannedWay way) => way.Figures?.Hazards ?? [];
        Phrase Heaviest(PlannedWay way) => Linked(Make.WorstFirst(bindery.Plan.Hazards).Select(h => h.Hazard.Item.Id).Where(Here(way).Contains).Take(1));
        Phrase OnlyHere(PlannedWay way) => Linked(all.Count == 1 ? [] : Here(way).Where(h => all.All(w => w == way || !Here(w).Contains(h))));
        return
        [
            ("column-heaviest", Heaviest),
            ("column-only-here", OnlyHere),
            ("column-consents", way => Linked((way.Figures?.Consents ?? []).Where(c => !shared.Contains(c)))),
        ];
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
