namespace GuideBuilder.Planning.Derived;

/// <summary>One run of derivation: each fact worked out once, those it asks before it, whatever the written order.</summary>
internal sealed class Derivation
{
    private readonly AnswerSet _answers;
    private readonly Tables _tables;
    private readonly Dictionary<string, FactRule> _rules;
    private readonly Dictionary<string, Given.Derived> _found = new(StringComparer.Ordinal);
    private readonly List<string> _waiting = [];
    private readonly List<Fault> _faults = [];

    private Derivation(AnswerSet answers, Guidance guidance)
    {
        _answers = answers;
        _tables = guidance.Tables;
        _rules = guidance.Facts.ToDictionary(f => f.Id, StringComparer.Ordinal);
    }

    /// <summary>All facts that follow from the answers, beside those that are set.</summary>
    public static (Facts Facts, ImmutableArray<Fault> Faults) Of(AnswerSet answers, Guidance guidance, IEnumerable<Given.Derived> set)
    {
        var run = new Derivation(answers, guidance);
        foreach (var given in set)
        {
            run._found[given.Name] = given;
        }

        foreach (var name in CalculatedFact.All.Select(f => f.Name).Concat(guidance.Facts.Select(f => f.Id)))
        {
            run.Fact(name);
        }

        return (new(answers, run._found.ToFrozenDictionary(StringComparer.Ordinal)), [.. run._faults]);
    }

    /// <summary>Finds answers and facts as they are asked for, beside those that are set. For one thread.</summary>
    public static Lookup OnDemand(AnswerSet answers, Guidance guidance, IEnumerable<Given.Derived> set)
    {
        var run = new Derivation(answers, guidance);
        foreach (var given in set)
        {
            run._found[given.Name] = given;
        }

        return run.Find;
    }

    /// <summary>What a calculator finds under a name: a name that this guidance does not have counts as not asked.</summary>
    internal static Given FindIn(Facts facts, string name) =>
        facts.Derived.TryGetValue(name, out var fact) ? fact : facts.Answers.ByName.TryGetValue(name, out var answer) ? answer : Absent(name);

    private Given Find(string name) =>
        _answers.ByName.TryGetValue(name, out var answer) ? answer : IsFact(name) ? Fact(name) : Absent(name);

    private bool IsFact(string name) => _found.ContainsKey(name) || _rules.ContainsKey(name) || Calculators.ByName.ContainsKey(name);

    // A calculator may ask a question that this guidance does not have: nobody was asked.
    private static Given.Derived Absent(string name) => new(name, Standing.NotAsked, null, new("question", name, Place.None, Truth.Fails, [], LocalText.Empty, []));

    private Given.Derived Fact(string name)
    {
        if (_found.TryGetValue(name, out var found))
        {
            return found;
        }

        if (_waiting.Contains(name))
        {
            return Circle(name);
        }

        _waiting.Add(name);
        var fact = Calculators.ByName.TryGetValue(name, out var calculator) ? calculator.Of(Find, _tables) : OfRule(_rules[name]);
        _waiting.RemoveAt(_waiting.Count - 1);
        _found[name] = fact;
        return fact;
    }

    private Given.Derived Circle(string name)
    {
        var circle = _waiting[_waiting.IndexOf(name)..];
        var first = circle.Order(StringComparer.Ordinal).First();
        var at = circle.IndexOf(first);
        _faults.Add(PlanningFaults.CircleOfFacts([.. circle[at..], .. circle[..at], first], _rules.TryGetValue(first, out var rule) ? rule.Head.Place : Place.None));
        return new(name, Standing.Unknown, null, new("fact", name, Place.None, Truth.Open, [], LocalText.Empty, []));
    }

    private Given.Derived OfRule(FactRule rule)
    {
        var applies = Judge.Of(rule.Head.AppliesIf, Find);
        if (applies.Truth != Truth.Holds)
        {
            return new(rule.Id, applies.Truth == Truth.Open ? Standing.Unknown : Standing.NotAsked, null, Items.Reason(rule.Head, applies));
        }

        var rows = rule.Rows.Select(r => (Row: r, Judged: Judge.Of(r.When, Find))).ToArray();
        var holding = rows.Where(r => r.Judged.Truth == Truth.Holds).ToArray();
        _faults.AddRange(holding.Skip(1).Select(r => PlanningFaults.RowsOverlap(rule.Id, r.Row.Place)));
        if (holding.Length > 0)
        {
            return new(rule.Id, Standing.Known, holding[0].Row.Value, Items.Reason(rule.Head, holding[0].Judged));
        }

        var open = rows.Where(r => r.Judged.Truth == Truth.Open).SelectMany(r => r.Judged.Deciding).ToImmutableArray();
        var failing = rows.SelectMany(r => r.Judged.Deciding).ToImmutableArray();
        return rows.Any(r => r.Judged.Truth == Truth.Open)
            ? new(rule.Id, Standing.Unknown, null, Items.Reason(rule.Head, new(Truth.Open, open)))
            : new(rule.Id, rule.Otherwise is null ? Standing.NotAsked : Standing.Known, rule.Otherwise, Items.Reason(rule.Head, new(Truth.Holds, failing)));
    }
}
