using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What each answer to an open question would change, in a small table, and what the plan takes meanwhile.</summary>
internal static class FindOutTable
{
    private const int FewElsewhere = 3;

    /// <summary>The table of what changes, in words what does not, what is assumed until the answer is there, and whether an answer may widen a range.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, FindOut entry)
    {
        var none = bindery.Say("no-change");
        var columns = Columns(bindery, entry);
        var told = columns.Where(c => c.Cells.Any(p => p.PlainWords != none)).ToList();
        var same = columns.Except(told).Select(c => bindery.Say(c.Head)).ToList();
        return
        [
            .. told.Count == 0 ? ImmutableArray<Block>.Empty : Make.Grid(
                bindery,
                "find-out-caption",
                ["column-answer", .. told.Select(c => c.Head)],
                entry.Rows.Select((r, i) => Make.Row(null, [Answer(bindery, entry, r), .. told.Select(c => c.Cells[i])]))),
            .. same.Count == 0 ? ImmutableArray<Block>.Empty : [Make.Say(bindery, "find-out-same", ("columns", string.Join(", ", same)))],
            .. entry.Assumed is { } assumed ? [Make.Say(bindery, "find-out-assumed", ("answer", bindery.Answers.Say(assumed, entry.Question)))] : ImmutableArray<Block>.Empty,
            .. entry.MayWiden && told.Exists(c => c.Head is "column-cost" or "column-finish") ? [Make.Say(bindery, "find-out-may-widen")] : ImmutableArray<Block>.Empty,
        ];
    }

    private static List<(string Head, ImmutableArray<Phrase> Cells)> Columns(Bindery bindery, FindOut entry)
    {
        var comesIn = entry.Rows.SelectMany(r => r.Changes).Where(c => c.State == ItemState.Settled).Select(c => c.Item).ToFrozenSet();
        ImmutableArray<Phrase> Changes(params string[] kinds) => [.. entry.Rows.Select(r => Changed(bindery, r, kinds, comesIn))];
        var lines = entry.Rows.Select(r => Said(bindery, r.Changes.Where(c => c.Item.Kind == "cost"), comesIn)).ToArray();
        var costs = Same(bindery, [.. entry.Rows.Select(r => Cost(bindery, r.Cost))], entry.CostSpread > 0 ? "change-too-small" : "no-change");
        return
        [
            ("column-cost", [.. costs.Select((c, i) => lines[i].IsEmpty ? c : entry.Rows[i].Cost is null ? lines[i] : c + Phrase.Of("; ") + lines[i])]),
            ("column-finish", Same(bindery, [.. entry.Rows.Select(r => Finish(bindery, r.Finish))], "no-change")),
            ("column-parties-duties", Changes("party", "step")),
            ("column-dangers", Changes("hazard")),
            ("column-consents", Changes("consent")),
        ];
    }

    private static Phrase Answer(Bindery bindery, FindOut entry, FindOutRow row) =>
        Phrase.Of(row.Answer is { } answer ? bindery.Answers.Say(answer, entry.Question) : bindery.Say("answer-not-asked"));

    private static Phrase Cost(Bindery bindery, QuantileRange<decimal>? cost) =>
        cost is null ? Phrase.Of(bindery.Say("no-change")) : Phrase.Of(bindery.Ranges.Half(ThreePoint.Of(cost.P10, cost.P50, cost.P90)!, bindery.Plan.Money.Currency));

    private static Phrase Finish(Bindery bindery, QuantileRange<LocalDate>? finish) =>
        finish is null ? Phrase.Of(bindery.Say("no-change")) : bindery.Dates.Range(new(finish.P10, finish.P50, finish.P90));

    // Ranges that read alike are no change that a reader could see; where the figures differ all the same, that is said.
    private static ImmutableArray<Phrase> Same(Bindery bindery, ImmutableArray<Phrase> cells, string alike) =>
        cells.Length > 1 && cells.Select(c => c.PlainWords).Distinct(StringComparer.Ordinal).Count() == 1
            ? [.. cells.Select(_ => Phrase.Of(bindery.Say(alike)))]
            : cells;

    private static Phrase Changed(Bindery bindery, FindOutRow row, string[] kinds, FrozenSet<ItemName> elsewhere) =>
        Said(bindery, row.Changes.Where(c => kinds.Contains(c.Item.Kind) && IsTold(bindery, c.Item)), elsewhere) is { IsEmpty: false } said ? said : Phrase.Of(bindery.Say("no-change"));

    // Of the steps, only the household's own are told here.
    private static bool IsTold(Bindery bindery, ItemName item) => item.Kind != "step" || bindery.Items.Find(item.Id) is Step { IsDuty: true };

    // What comes in, then what falls away; of that, many that come in with another answer are named there and only counted here.
    private static Phrase Said(Bindery bindery, IEnumerable<ItemChange> changes, FrozenSet<ItemName> comesIn)
    {
        var (added, gone) = (changes.Where(c => c.State == ItemState.Settled).ToList(), changes.Where(c => c.State == ItemState.RuledOut).ToList());
        var elsewhere = gone.Where(c => comesIn.Contains(c.Item)).ToList();
        if (elsewhere.Count <= FewElsewhere)
        {
            elsewhere = [];
        }

        Phrase Named(string label, IEnumerable<ItemChange> items) =>
            Phrase.Join(", ", items.Select(c => bindery.Link(c.Item.Id))) is { IsEmpty: false } names ? bindery.Labels.Compose(label, ("item", names)) : Phrase.Empty;
        var counted = elsewhere.Count == 0 ? Phrase.Empty : Phrase.Of(bindery.Labels.Count("change-others-fall-away", elsewhere.Count));
        return Phrase.Join("; ", new[] { Named("change-comes-in", added), Named("change-falls-away", gone.Except(elsewhere)), counted }.Where(p => !p.IsEmpty));
    }
}
