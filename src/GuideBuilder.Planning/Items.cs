namespace GuideBuilder.Planning;

/// <summary>The one way in which any entry of the guidance becomes an item of the plan: parties, ways, steps, costs, hazards, consents and clocks alike.</summary>
internal static class Items
{
    /// <summary>Every entry with its state and why, in guidance order.</summary>
    public static ImmutableArray<Planned<T>> Plan<T>(ImmutableArray<T> rules, Lookup lookup)
        where T : Rule => [.. rules.Select(r => Plan(r, lookup))];

    /// <summary>One entry with its state and why.</summary>
    public static Planned<T> Plan<T>(T rule, Lookup lookup)
        where T : Rule
    {
        var judgement = Judge.Of(rule.Head.AppliesIf, lookup);
        return new(rule, StateOf(judgement.Truth), Reason(rule.Head, judgement));
    }

    /// <summary>Why: the rule that was judged, and the leaves that decided it.</summary>
    public static Because Reason(RuleHead head, Judgement judgement) =>
        new(head.Kind, head.Id, head.Place, judgement.Truth, judgement.Deciding, head.Because, head.Basis.Sources);

    private static ItemState StateOf(Truth truth) => truth switch
    {
        Truth.Holds => ItemState.Settled,
        Truth.Open => ItemState.Open,
        _ => ItemState.RuledOut,
    };
}
