using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Worlds;

/// <summary>
/// A world as the trials see it: the way's facts, with the unknown questions that matter given a value or not asked. Says only whether conditions hold, and keeps no reasons, so that ten thousand worlds take little time.
/// Whatever else is unknown stays blank, as in <see cref="World"/>.
/// </summary>
internal sealed class DefiniteWorld(Facts facts, FrozenDictionary<string, FactRule> rules, Tables tables)
{
    private readonly Dictionary<string, Value?> _taken = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Value?> _derived = new(StringComparer.Ordinal);

    /// <summary>Takes a value for an unknown question; null where this world does not ask it.</summary>
    public void Take(string question, Value? value) => _taken[question] = value;

    /// <summary>Forgets everything taken, to be used for another world.</summary>
    public void Clear()
    {
        _taken.Clear();
        _derived.Clear();
    }

    /// <summary>Whether a condition holds here.</summary>
    public bool Holds(Condition condition) => condition switch
    {
        Condition.Asks asks => ValueOf(asks.Name) is { } value && asks.Comparison.Of(value) == Truth.Holds,
        Condition.AllOf all => All(all.Parts),
        Condition.AnyOf any => Any(any.Parts),
        Condition.NoneOf none => !Any(none.Parts),
        _ => throw new UnreachableException(),
    };

    /// <summary>What a name is worth here; null when not asked or blank.</summary>
    public Value? ValueOf(string name)
    {
        if (_taken.TryGetValue(name, out var taken))
        {
            return taken;
        }

        var given = Derivation.FindIn(facts, name);
        return given.Standing == Standing.Known ? given.Value : given is Given.Derived { Standing: Standing.Unknown } ? Derived(name) : null;
    }

    private bool All(ImmutableArray<Condition> parts)
    {
        foreach (var part in parts)
        {
            if (!Holds(part))
            {
                return false;
            }
        }

        return true;
    }

    private bool Any(ImmutableArray<Condition> parts)
    {
        foreach (var part in parts)
        {
            if (Holds(part))
            {
                return true;
            }
        }

        return false;
    }

    private Value? Derived(string name)
    {
        if (!_derived.TryGetValue(name, out var value))
        {
            _derived[name] = value = Calculators.ByName.TryGetValue(name, out var calculator) ? calculator.Of(GivenOf, tables).Value : rules.TryGetValue(name, out var rule) ? OfRule(rule) : null;
        }

        return value;
    }

    private Value? OfRule(FactRule rule) => !Holds(rule.Head.AppliesIf) ? null : rule.Rows.FirstOrDefault(r => Holds(r.When)) is { } row ? row.Value : rule.Otherwise;

    private Given GivenOf(string name) => ValueOf(name) is { } value ? new Given.Set(name, value) : Derivation.FindIn(facts, name) switch
    {
        Given.Answered answer => answer with { Standing = Standing.NotAsked, Value = null },
        Given.Derived fact => fact with { Standing = Standing.NotAsked, Value = null },
        var other => other,
    };
}
