namespace GuideBuilder.Reading;

/// <summary>Looks for answers under which a condition holds: every option of every question under it, quantities at, between and beyond their limits, facts followed down to the answers. A branch is left as soon as the condition fails whatever the rest.</summary>
internal sealed class CaseSearch
{
    private const int MostCases = 20_000;

    private readonly Condition _condition;
    private readonly FrozenDictionary<string, FactRule> _facts;
    private readonly FrozenDictionary<string, Question> _questions;
    private readonly ImmutableArray<string> _names;
    private readonly Candidates _candidates;
    private readonly Dictionary<string, Given> _given = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Given> _derived = new(StringComparer.Ordinal);
    private int _cases;

    /// <summary>Prepares the search for one condition.</summary>
    public CaseSearch(Condition condition, Guidance guidance, Registry registry)
    {
        _condition = condition;
        _facts = guidance.Facts.ToFrozenDictionary(f => f.Id, StringComparer.Ordinal);
        _questions = guidance.Questions.ToFrozenDictionary(q => q.Name, StringComparer.Ordinal);
        var parts = WithFacts(condition).ToList();
        _names = [.. parts.SelectMany(p => p.Names).Where(n => !_facts.ContainsKey(n)).Distinct(StringComparer.Ordinal).OrderBy(n => registry.Names[n].From).ThenBy(n => registry.Names[n].Order).ThenBy(n => n, StringComparer.Ordinal)];
        _candidates = new(parts.Concat(_names.Where(_questions.ContainsKey).Select(n => _questions[n].AskIf)), registry, _questions);
    }

    /// <summary>The first case found, described in words; none, when there is none among those tried; complete, when every case was tried.</summary>
    public (string? Example, bool IsComplete) Find() => (Try(0) ? Describe() : null, _cases < MostCases);

    private bool Try(int index)
    {
        _derived.Clear();
        var truth = _cases++ < MostCases ? Judge.Of(_condition, Look).Truth : Truth.Fails;
        if (truth != Truth.Open || index == _names.Length)
        {
            return truth == Truth.Holds;
        }

        var name = _names[index];
        foreach (var candidate in _candidates.Of(name, AskedFor(name)))
        {
            _given[name] = candidate;
            if (Try(index + 1))
            {
                return true;
            }
        }

        return !_given.Remove(name);
    }

    private Truth AskedFor(string name) => _questions.TryGetValue(name, out var question) ? Judge.Of(question.AskIf, Look).Truth : Truth.Holds;

    private Given Look(string name) =>
        _given.TryGetValue(name, out var given) ? given
        : _derived.TryGetValue(name, out var derived) ? derived
        : _facts.TryGetValue(name, out var fact) ? _derived[name] = Derive(fact)
        : Candidates.Unknown(name);

    private Given Derive(FactRule fact)
    {
        var judged = fact.Rows.Select(r => (r.Value, Judge.Of(r.When, Look).Truth)).ToList();
        var value = judged.Find(r => r.Truth == Truth.Holds).Value ?? (judged.Exists(r => r.Truth == Truth.Open) ? null : fact.Otherwise);
        return value is null ? Candidates.Unknown(fact.Id) : new Given.Set(fact.Id, value);
    }

    private IEnumerable<Condition> WithFacts(Condition condition)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var waiting = new Stack<Condition>([condition]);
        while (waiting.TryPop(out var next))
        {
            yield return next;
            foreach (var fact in next.Names.Where(n => _facts.ContainsKey(n) && seen.Add(n)).Select(n => _facts[n]))
            {
                fact.Rows.ToList().ForEach(r => waiting.Push(r.When));
            }
        }
    }

    private string Describe() => _given.Count == 0 ? "always" : string.Join(", ", _names.Where(_given.ContainsKey).Select(n => Candidates.Describe(_given[n])));
}
