using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What each answer to an open question would change, in a small table, and what the plan takes meanwhile.</summary>
internal static class FindOutTable
{
    /// <summary>The table, what is assumed until the answer is there, and whether an answer may widen a range.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, FindOut entry)
    {
        var costs = Same(bindery, [.. entry.Rows.Select(r => Cost(bindery, r.Cost))]);
        var finishes = Same(bindery, [.. entry.Rows.Select(r => Finish(bindery, r.Finish))]);
        return
        [
            .. Make.Grid(
                bindery,
                "find-out-caption",
                ["column-answer", "column-cost", "column-finish", "column-parties-duties", "column-dangers", "column-consents"],
                entry.Rows.Select((r, i) => Row(bindery, entry, r, costs[i], finishes[i]))),
            .. entry.Assumed is { } assumed ? [Make.Say(bindery, "find-out-assumed", ("answer", bindery.Answers.Say(assumed, entry.Question)))] : ImmutableArray<Block>.Empty,
            .. entry.MayWiden ? [Make.Say(bindery, "find-out-may-widen")] : ImmutableArray<Block>.Empty,
        ];
    }

    private static Phrase Cost(Bindery bindery, QuantileRange<decimal>? cost) =>
        cost is null ? Phrase.Of(bindery.Say("no-change")) : Phrase.Of(bindery.Ranges.Half(ThreePoint.Of(cost.P10, cost.P50, cost.P90)!, bindery.Plan.Money.Currency));

    private static Phrase Finish(Bindery bindery, QuantileRange<LocalDate>? finish) =>
        finish is null ? Phrase.Of(bindery.Say("no-change")) : bindery.Dates.Range(new(finish.P10, finish.P50, finish.P90));

    // Ranges that read alike say so in words.
    private static ImmutableArray<Phrase> Same(Bindery bindery, ImmutableArray<Phrase> cells) =>
        cells.Length > 1 && cells.Select(c => c.PlainWords).Distinct(StringComparer.Ordinal).Count() == 1 && cells[0].PlainWords != bindery.Say("no-change")
            ? [.. cells.Select(_ => Phrase.Of(bindery.Say("same-figures")))]
            : cells;

    private static GridRow Row(Bindery bindery, FindOut entry, FindOutRow row, Phrase cost, Phrase finish)
    {
        var none = Phrase.Of(bindery.Say("no-change"));
        Phrase Changes(params string[] kinds) => Said(bindery, row.Changes.Where(c => kinds.Contains(c.Item.Kind) && IsTold(bindery, c.Item))) is { IsEmpty: false } said ? said : none;
        return Make.Row(
            null,
            Phrase.Of(row.Answer is { } answer ? bindery.Answers.Say(answer, entry.Question) : bindery.Say("answer-not-asked")),
            Said(bindery, row.Changes.Where(c => c.Item.Kind == "cost")) is { IsEmpty: false } lines ? cost + Phrase.Of("; ") + lines : cost,
            finish,
            Changes("party", "step"),
            Changes("hazard"),
            Changes("consent"));
    }

    // Of the steps, only the household's own are told here.
    private static bool IsTold(Bindery bindery, ItemName item) => item.Kind != "step" || bindery.Items.Find(item.Id) is Step { IsDuty: true };

    private static Phrase Said(Bindery bindery, IEnumerable<ItemChange> changes) => Phrase.Join("; ", changes.Select(c =>
        bindery.Labels.Compose(c.State == ItemState.Settled ? "change-comes-in" : "change-falls-away", ("item", bindery.Link(c.Item.Id)))));
}
