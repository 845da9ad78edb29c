namespace GuideBuilder.Model;

/// <summary>Evaluates conditions with strong Kleene logic and keeps the leaves that decide.</summary>
public static class Judge
{
    /// <summary>Truth and deciding leaves of a condition under a lookup.</summary>
    public static Judgement Of(Condition condition, Lookup lookup) => condition switch
    {
        Condition.Asks asks => Ask(asks, lookup),
        Condition.AllOf all => Join(all.Parts, lookup, t => t, Kleene.All),
        Condition.AnyOf any => Join(any.Parts, lookup, t => t, Kleene.Any),
        Condition.NoneOf none => Join(none.Parts, lookup, Kleene.Not, Kleene.All),
        _ => throw new UnreachableException(),
    };

    private static Judgement Ask(Condition.Asks asks, Lookup lookup)
    {
        var given = lookup(asks.Name);
        var truth = given.Standing switch
        {
            Standing.Known => asks.Comparison.Of(given.Value!),
            Standing.Unknown => Truth.Open,
            _ => Truth.Fails,
        };
        return new(truth, [new Leaf(asks, given, truth)]);
    }

    // The children that decide are those whose own truth, as it counts here, equals the outcome: for a holding all-of every
    // child, for a failing all-of the failing ones, and so on.
    private static Judgement Join(ImmutableArray<Condition> parts, Lookup lookup, Func<Truth, Truth> counts, Func<IEnumerable<Truth>, Truth> join)
    {
        var judged = parts.Select(p => Of(p, lookup)).ToArray();
        var truth = join(judged.Select(j => counts(j.Truth)));
        return new(truth, [.. judged.Where(j => counts(j.Truth) == truth).SelectMany(j => j.Deciding)]);
    }
}
