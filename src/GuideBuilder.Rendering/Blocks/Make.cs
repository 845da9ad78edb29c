using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Small parts that many blocks are made of.</summary>
internal static class Make
{
    /// <summary>A paragraph with a fixed phrase.</summary>
    internal static Block Say(Bindery bindery, string id, params (string Name, string Value)[] values) => new Block.Prose(Phrase.Of(bindery.Say(id, values)));

    /// <summary>A heading with a fixed phrase, and a text under it; nothing when the text is empty.</summary>
    internal static ImmutableArray<Block> Under(Bindery bindery, string label, LocalText text, int level = 1) =>
        text.IsEmpty ? [] : [new Block.Heading(level, null, Phrase.Of(bindery.Say(label))), .. bindery.Read(text, level + 1)];

    /// <summary>A heading with a fixed phrase over blocks; nothing when there are none.</summary>
    internal static ImmutableArray<Block> Under(Bindery bindery, string label, ImmutableArray<Block> blocks, int level = 1) =>
        blocks.IsEmpty ? [] : [new Block.Heading(level, null, Phrase.Of(bindery.Say(label))), .. blocks];

    /// <summary>A list of lines; nothing when there are none.</summary>
    internal static ImmutableArray<Block> List(IEnumerable<Phrase> lines, bool numbered = false)
    {
        ImmutableArray<ImmutableArray<Block>> items = [.. lines.Select(l => ImmutableArray.Create<Block>(new Block.Prose(l)))];
        return items.IsEmpty ? [] : [new Block.Listing(numbered, items)];
    }

    /// <summary>A table with a fixed caption and fixed heads; the fixed phrase for none when it has no rows. A head that ends in # is a column of figures.</summary>
    internal static ImmutableArray<Block> Grid(Bindery bindery, string caption, ImmutableArray<string> heads, IEnumerable<GridRow> rows)
    {
        ImmutableArray<GridRow> all = [.. rows];
        return all.IsEmpty
            ? [Say(bindery, "none-here")]
            : [new Block.Grid(Phrase.Of(bindery.Say(caption)), [.. heads.Select(h => Column(bindery, h))], all)];
    }

    /// <summary>A row of a table.</summary>
    internal static GridRow Row(string? anchor, params Phrase[] cells) => new(anchor, [.. cells]);

    /// <summary>The steps that still have to be done, in the order of their dates; while a stop sign stands, those that deal with it.</summary>
    internal static IEnumerable<PlannedStep> Ahead(Plan plan) => StepBlocks.InOrder(plan).Where(s => IsAhead(plan, s));

    private static bool IsAhead(Plan plan, PlannedStep step) =>
        plan.IsSuspended ? plan.StopSteps.Contains(step.Step.Item.Id) : step.Dates is { Done: false } || (plan.IsBeyond && step.Dates is null);

    /// <summary>Present hazards: those that come first where they are settled, then worst first. Of the same severity what is settled stands before what may apply, then likelihood decides, then guidance order.</summary>
    internal static IOrderedEnumerable<PlannedHazard> WorstFirst(IEnumerable<PlannedHazard> hazards) =>
        Gravest(hazards).ThenByDescending(h => h.Hazard.Item.Before.Score);

    /// <summary>The same without likelihood, for lists that have an order of their own.</summary>
    internal static IOrderedEnumerable<PlannedHazard> Gravest(IEnumerable<PlannedHazard> hazards) =>
        hazards.Where(h => h.Hazard.IsPresent)
            .OrderByDescending(h => IsFirst(h.Hazard))
            .ThenByDescending(h => h.Hazard.Item.Word)
            .ThenByDescending(h => h.Hazard.Item.Before.Severity)
            .ThenByDescending(h => h.Hazard.State);

    /// <summary>Whether it stands before all others in this home.</summary>
    internal static bool IsFirst(Planned<Hazard> hazard) => hazard is { State: ItemState.Settled, Item.ComesFirst: true };

    // A head that ends in # is a column of figures.
    private static GridColumn Column(Bindery bindery, string head) => head.EndsWith('#') ? new(bindery.Say(head[..^1]), true) : new(bindery.Say(head));
}
