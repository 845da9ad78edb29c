namespace GuideBuilder.Planning.Derived;

/// <summary>From what was answered to what follows from it.</summary>
public static class FactDeriver
{
    /// <summary>Answers and facts under one lookup, before a way is taken: the way and what is read off the finished plan are unknown.</summary>
    public static Staged<Facts> Derive(AnswerSet answers, Guidance guidance)
    {
        var (facts, faults) = Derivation.Of(answers, guidance, Unset(CalculatedFact.Way));
        return Staged<Facts>.From(facts, faults);
    }

    /// <summary>The same home if it took that way.</summary>
    internal static (Facts Facts, ImmutableArray<Fault> Faults) Under(AnswerSet answers, Guidance guidance, Way way) =>
        Derivation.Of(answers, guidance, [OfWay(way), .. Unset()]);

    /// <summary>The same, worked out as it is asked for.</summary>
    internal static Lookup OnDemand(AnswerSet answers, Guidance guidance, Way way) => Derivation.OnDemand(answers, guidance, [OfWay(way), .. Unset()]);

    /// <summary>The facts with more that the planner sets, such as those read off the finished plan.</summary>
    internal static Facts With(this Facts facts, IEnumerable<Given.Derived> set) =>
        facts with { Derived = facts.Derived.Values.Concat(set).GroupBy(g => g.Name, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal) };

    /// <summary>A fact read off the finished plan.</summary>
    internal static Given.Derived OfPlan(string name, Value? value) => value is null
        ? new(name, Standing.Unknown, null, ByPlanner(name, Truth.Open))
        : new(name, Standing.Known, value, ByPlanner(name, Truth.Holds));

    private static Given.Derived OfWay(Way way) =>
        new(CalculatedFact.Way, Standing.Known, new Value.Option(way.Id), Items.Reason(way.Head, new(Truth.Holds, [])));

    private static IEnumerable<Given.Derived> Unset(params string[] names) =>
        names.Append(CalculatedFact.OffSupplyHours).Append(CalculatedFact.Months).Select(n => OfPlan(n, null));

    private static Because ByPlanner(string name, Truth truth) => new("planner", name, Place.None, truth, [], LocalText.Empty, []);
}
