namespace GuideBuilder.Model;

/// <summary>Why something is in the plan: the rule that brought it in (kind, id, place), the truth of its condition, the leaves that decided it, the rule's own reason in words, and the sources it rests on.</summary>
public sealed record Because(string RuleKind, string RuleId, Place Place, Truth Truth, ImmutableArray<Leaf> Deciding, LocalText Reason, ImmutableArray<string> Sources)
{
    /// <summary>The unanswered questions under this reason, facts followed down to their own reasons, each once, in first-met order.</summary>
    public IEnumerable<Question> Unsettled => Deciding.SelectMany(UnderLeaf).DistinctBy(q => q.Name);

    private static IEnumerable<Question> UnderLeaf(Leaf leaf) => leaf.Given switch
    {
        Given.Answered { Standing: Standing.Unknown } answered => [answered.Question],
        Given.Derived { Standing: Standing.Unknown } derived => derived.Because.Unsettled,
        _ => [],
    };
}
