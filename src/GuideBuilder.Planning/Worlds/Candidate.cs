namespace GuideBuilder.Planning.Worlds;

/// <summary>A value that an unknown answer may turn out to have: its share among all of that question (together one), and whether the assumed world takes it.</summary>
internal sealed record Candidate(Value Value, double Share, bool Assumed);

/// <summary>What an unknown answer may turn out to be.</summary>
internal static class Candidates
{
    /// <summary>The candidates in written order, exactly one of them assumed; none for words, dates, days and numbers that are names, which stay blank, and for quantities without listed values.</summary>
    public static ImmutableArray<Candidate> Of(Question question, Func<Condition, bool> holds) => question.Kind switch
    {
        QuestionKind.Choice => Shared(OfOptions(question, holds, id => new Value.Option(id))),
        QuestionKind.YesNo when question.Options.IsEmpty => [new(Value.YesNo(true), 0.5, true), new(Value.YesNo(false), 0.5, false)],
        QuestionKind.YesNo => Shared(OfOptions(question, holds, id => new Value.Option(id))),
        QuestionKind.Several => OfSeveral(question, holds),
        QuestionKind.Quantity => Shared(question.IfUnknown.Select(w => new Candidate(new Value.Amount(w.Value), (double)w.Weight, w.Assume))),
        _ => [],
    };

    private static IEnumerable<Candidate> OfOptions(Question question, Func<Condition, bool> holds, Func<string, Value> value)
    {
        var weights = question.WeightsIf.FirstOrDefault(w => holds(w.When))?.Weights;
        return question.Options.Select(o => new Candidate(value(o.Id), (double)(weights?.GetValueOrDefault(o.Id, o.Weight) ?? o.Weight), o.Assume));
    }

    // Of several, the unknown answer is one of the options or none of them; none is what is assumed unless an option says so.
    private static ImmutableArray<Candidate> OfSeveral(Question question, Func<Condition, bool> holds)
    {
        var single = OfOptions(question, holds, id => new Value.Several([id])).ToArray();
        return single.Any(c => c.Assumed) ? Shared(single) : Shared(single.Prepend(new(new Value.Several([]), single.Max(c => c.Share), true)));
    }

    private static ImmutableArray<Candidate> Shared(IEnumerable<Candidate> weighted)
    {
        var all = weighted.ToArray();
        var sum = all.Sum(c => c.Share);
        var taken = Taken(all);
        return [.. all.Select((c, i) => new Candidate(c.Value, sum > 0 ? c.Share / sum : 1d / all.Length, i == taken))];
    }

    // What cannot be in this home, because its share is nothing there, is not assumed either: the likeliest is.
    private static int Taken(Candidate[] all)
    {
        var assumed = Math.Max(0, Array.FindIndex(all, c => c.Assumed));
        return all[assumed].Share > 0 ? assumed : Array.FindIndex(all, c => c.Share == all.Max(a => a.Share));
    }
}
