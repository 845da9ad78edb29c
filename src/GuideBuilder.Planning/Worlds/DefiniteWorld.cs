using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Worlds;

/// <summary>
/// A world as the trials see it: the way's facts, with the unknown questions that matter given a value or not asked. Says only whether conditions hold, and keeps no reasons, so that ten thousand worlds take little time.
/// Whatever else is unknown stays blank, as in <see cref="World"/>. For one thread.
/// </summary>
internal sealed class DefiniteWorld(Facts facts, FrozenDictionary<string, FactRule> rules, Tables tables)
{
    private readonly Dictionary<string, int> _slots = new(StringComparer.Ordinal);
    private readonly Dictionary<Condition, WorldTest> _tests = new(ReferenceEqualityComparer.Instance);
    private readonly List<Slot> _all = [];
    private int _world = 1;
    private int _derived = 1;

    /// <summary>Takes a value for an unknown question; null where this world does not ask it.</summary>
    public void Take(string question, Value? value) => Take(SlotOf(question), value);

    /// <summary>Takes a value for the unknown question in that place.</summary>
    public void Take(int slot, Value? value) => (_all[slot].Value, _all[slot].World) = (value, _world);

    /// <summary>Forgets everything taken, to be used for another world.</summary>
    public void Clear()
    {
        _world++;
        Forget();
    }

    /// <summary>Forgets what has been worked out from what was taken, because something else is about to be taken.</summary>
    public void Forget() => _derived++;

    /// <summary>Whether a condition holds here.</summary>
    public bool Holds(Condition condition) => TestOf(condition).Holds(this);

    /// <summary>What a name is worth here; null when not asked or blank.</summary>
    public Value? ValueOf(string name) => ValueAt(SlotOf(name));

    /// <summary>The same for the name in that place.</summary>
    public Value? ValueAt(int slot)
    {
        var at = _all[slot];
        if (!at.Varies || at.World == (at.IsDerived ? _derived : _world))
        {
            return at.Value;
        }

        if (!at.IsDerived)
        {
            return null;
        }

        at.Value = at.Calculator is { } calculator ? Worked(calculator) : at.Rows is null ? null : OfRows(at.Rows, at.AppliesIf!, at.Otherwise);
        at.World = _derived;
        return at.Value;
    }

    /// <summary>A condition made ready to be asked of this world again and again.</summary>
    public WorldTest TestOf(Condition condition)
    {
        if (!_tests.TryGetValue(condition, out var test))
        {
            _tests[condition] = test = Ready(condition);
        }

        return test;
    }

    /// <summary>The place of a name.</summary>
    public int SlotOf(string name)
    {
        if (!_slots.TryGetValue(name, out var slot))
        {
            _slots[name] = slot = _all.Count;
            var given = Derivation.FindIn(facts, name);
            var unknown = given.Standing == Standing.Unknown;
            _all.Add(new() { Value = given.Standing == Standing.Known ? given.Value : null, Varies = unknown, IsDerived = unknown && given is Given.Derived });
            if (_all[slot].IsDerived)
            {
                Derive(_all[slot], name);
            }
        }

        return slot;
    }

    private WorldTest Ready(Condition condition) => condition switch
    {
        Condition.Asks asks => Ready(asks, SlotOf(asks.Name)),
        Condition.AllOf all => WorldTest.All(all.Parts.Select(TestOf)),
        Condition.AnyOf any => WorldTest.Any(any.Parts.Select(TestOf)),
        Condition.NoneOf none => WorldTest.Not(WorldTest.Any(none.Parts.Select(TestOf))),
        _ => throw new UnreachableException(),
    };

    private WorldTest Ready(Condition.Asks asks, int slot) =>
        _all[slot].Varies ? WorldTest.Ask(slot, asks.Comparison)
        : _all[slot].Value is { } value && asks.Comparison.Of(value) == Truth.Holds ? WorldTest.Always
        : WorldTest.Never;

    private void Derive(Slot slot, string name)
    {
        if (Calculators.ByName.TryGetValue(name, out var calculator))
        {
            slot.Calculator = new(calculator, [.. calculator.Needs.Concat(calculator.MayUse).Select(SlotOf)]);
        }
        else if (rules.TryGetValue(name, out var rule))
        {
            slot.AppliesIf = TestOf(rule.Head.AppliesIf);
            slot.Otherwise = rule.Otherwise;
            slot.Rows = [.. rule.Rows.Select(r => (TestOf(r.When), r.Value))];
        }
    }

    private Value? OfRows((WorldTest When, Value Value)[] rows, WorldTest appliesIf, Value? otherwise)
    {
        if (!appliesIf.Holds(this))
        {
            return null;
        }

        foreach (var (when, value) in rows)
        {
            if (when.Holds(this))
            {
                return value;
            }
        }

        return otherwise;
    }

    // The same inputs come again in most worlds.
    private Value? Worked(Working working)
    {
        var inputs = new Value?[working.Inputs.Length];
        for (var i = 0; i < inputs.Length; i++)
        {
            inputs[i] = ValueAt(working.Inputs[i]);
        }

        if (!working.Known.TryGetValue(inputs, out var value))
        {
            working.Known[inputs] = value = working.Calculator.Of(GivenOf, tables).Value;
        }

        return value;
    }

    private Given GivenOf(string name) => ValueOf(name) is { } value ? new Given.Set(name, value) : Derivation.FindIn(facts, name) switch
    {
        Given.Answered answer => answer with { Standing = Standing.NotAsked, Value = null },
        Given.Derived fact => fact with { Standing = Standing.NotAsked, Value = null },
        var other => other,
    };

    private sealed class Slot
    {
        public Value? Value { get; set; }

        public int World { get; set; } // or, of something derived, since when nothing was forgotten

        public bool Varies { get; init; }

        public bool IsDerived { get; init; }

        public Working? Calculator { get; set; }

        public WorldTest? AppliesIf { get; set; }

        public (WorldTest When, Value Value)[]? Rows { get; set; }

        public Value? Otherwise { get; set; }
    }

    private sealed record Working(Calculator Calculator, int[] Inputs)
    {
        public Dictionary<Value?[], Value?> Known { get; } = new(new SameValues());
    }

    private sealed class SameValues : IEqualityComparer<Value?[]>
    {
        public bool Equals(Value?[]? x, Value?[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(Value?[] values)
        {
            var hash = default(HashCode);
            foreach (var value in values)
            {
                hash.Add(value);
            }

            return hash.ToHashCode();
        }
    }
}
