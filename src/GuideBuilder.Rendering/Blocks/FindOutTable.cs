using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What each answer to an open question would change, in a small table, and what the plan takes meanwhile.</summary>
internal static class FindOutTable
{
    /// <summary>The table, what is assumed until the answer is there, and whether an answer may widen a range.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, FindOut entry) =>
    [
        .. Make.Grid(
            bindery,
            "find-out-caption",
            ["column-answer", "column-cost", "column-finish", "column-parties-duties", "column-dangers", "column-consents"],
            entry.Rows.Select(r => Row(bindery, entry, r))),
        .. entry.Assumed is { } assumed ? [Make.Say(bindery, "find-out-assumed", ("answer", bindery.Answers.Say(assumed, entry.Question)))] : ImmutableArray<Block>.Empty,
        .. entry.MayWiden ? [Make.Say(bindery, "find-out-may-widen")] : ImmutableArray<Block>.Empty,
    ];

    private static GridRow Row(Bindery bindery, FindOut entry, FindOutRow row)
    {
        var none = Phrase.Of(bindery.Say("no-change"));
        var currency = bindery.Plan.Money.Currency;
        Phrase Changes(params string[] kinds) => Said(bindery, row.Changes.Where(c => kinds.Contains(c.Item.Kind) && IsTold(bindery, c.Item))) is { IsEmpty: false } said ? said : none;
        return Make.Row(
            null,
            Phrase.Of(row.Answer is { } answer ? bindery.Answers.Say(answer, entry.Question) : bindery.Say("answer-not-asked")),
            row.Cost is { } cost ? Phrase.Of(bindery.Ranges.Total(ThreePoint.Of(cost.P10, cost.P50, cost.P90)!, currency)) : none,
            row.Finish is { } finish ? bindery.Dates.Range(new(finish.P10, finish.P50, finish.P90)) : none,
            Changes("party", "step"),
            Changes("hazard"),
            Changes("consent"));
    }

    // Of the steps, only the household's own are told here.
    private static bool IsTold(Bindery bindery, ItemName item) => item.Kind != "step" || bindery.Items.Find(item.Id) is Step { IsDuty: true };

    private static Phrase Said(Bindery bindery, IEnumerable<ItemChange> changes) => Phrase.Join("; ", changes.Select(c =>
        bindery.Labels.Compose(c.State == ItemState.Settled ? "change-comes-in" : "change-falls-away", ("item", bindery.Link(c.Item.Id)))));
}
