using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>What a world makes of a way: which of its steps there are, which of its chance events may happen, and for each line of money how many (null where the line is not there). The keys are the same for worlds that make the same of it.</summary>
internal sealed record WorldContent(string StepKey, string LineKey, bool[] Steps, bool[] Events, decimal?[] Numbers);

/// <summary>The steps, events and lines that may be otherwise when one answer is, and the questions that may then be asked otherwise, by their places.</summary>
internal sealed record Affected(ImmutableArray<int> Questions, ImmutableArray<int> Steps, ImmutableArray<int> Events, ImmutableArray<int> Lines)
{
    /// <summary>Whether nothing but questions can be otherwise.</summary>
    public bool IsNothing => Steps.IsEmpty && Events.IsEmpty && Lines.IsEmpty;
}

/// <summary>Reads the contents of one world after another. What is the same in several is made once, so that ten thousand worlds take little room. For one thread.</summary>
internal sealed class WorldContents
{
    private readonly DefiniteWorld _world;
    private readonly WorldTest[] _steps;
    private readonly WorldTest[] _events;
    private readonly Line[] _lines;
    private readonly char[] _stepKey;
    private readonly char[] _lineKey;
    private readonly Dictionary<string, (string Key, bool[] Steps, bool[] Events)>.AlternateLookup<ReadOnlySpan<char>> _byStepKey =
        new Dictionary<string, (string, bool[], bool[])>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    private readonly Dictionary<string, (string Key, decimal?[] Numbers)>.AlternateLookup<ReadOnlySpan<char>> _byLineKey =
        new Dictionary<string, (string, decimal?[])>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Makes ready what depends on the world.</summary>
    public WorldContents(WayCase way, DefiniteWorld world, ImmutableArray<Planned<Step>> steps, ImmutableArray<Planned<Cost>> lines)
    {
        WorldTest TestOf(ItemState state, Rule rule) => state == ItemState.Settled ? WorldTest.Always : world.TestOf(rule.Head.AppliesIf);
        _world = world;
        _steps = [.. steps.Select(s => TestOf(s.State, s.Item))];
        _events = [.. steps.SelectMany((s, i) => s.Item.MayHappen.Select(e => WorldTest.All([_steps[i], world.TestOf(e.AppliesIf)])))];
        _lines = [.. lines.Select(c => new Line(
            Quotations.Names(way.Facts.Answers, c.Item.Id, way.Occasion.Today) ? WorldTest.Always : TestOf(c.State, c.Item),
            c.Item.Quantity is { } name ? world.SlotOf(name) : -1,
            c.Item.Quantity is { } named ? Quantities.UnitOf(named, way.Guidance) : null))];
        (_stepKey, _lineKey) = (new char[_steps.Length + _events.Length], new char[_lines.Length]);
    }

    /// <summary>The contents of the world as it stands; the world may then go on to another.</summary>
    public WorldContent Read()
    {
        for (var i = 0; i < _stepKey.Length; i++)
        {
            _stepKey[i] = SignOf(i);
        }

        for (var l = 0; l < _lineKey.Length; l++)
        {
            _lineKey[l] = _lines[l].SignIn(_world);
        }

        return ContentOf(StepsOf(_stepKey), NumbersOf(_lineKey));
    }

    /// <summary>The contents of a world that differs from another in no more than the listed steps, events and lines; the other's where it differs in none.</summary>
    public WorldContent Read(WorldContent other, Affected affected)
    {
        other.StepKey.CopyTo(_stepKey);
        other.LineKey.CopyTo(_lineKey);
        var (steps, lines) = (false, false);
        foreach (var s in affected.Steps)
        {
            steps |= Put(_stepKey, s, SignOf(s));
        }

        foreach (var e in affected.Events)
        {
            steps |= Put(_stepKey, _steps.Length + e, SignOf(_steps.Length + e));
        }

        foreach (var l in affected.Lines)
        {
            lines |= Put(_lineKey, l, _lines[l].SignIn(_world));
        }

        return !steps && !lines ? other : ContentOf(
            steps ? StepsOf(_stepKey) : (other.StepKey, other.Steps, other.Events),
            lines ? NumbersOf(_lineKey) : (other.LineKey, other.Numbers));
    }

    private static WorldContent ContentOf((string Key, bool[] Steps, bool[] Events) steps, (string Key, decimal?[] Numbers) lines) =>
        new(steps.Key, lines.Key, steps.Steps, steps.Events, lines.Numbers);

    private static bool Put(char[] key, int at, char sign)
    {
        var other = key[at] != sign;
        key[at] = sign;
        return other;
    }

    // Of a step, or of an event further on.
    private char SignOf(int place) => (place < _steps.Length ? _steps[place] : _events[place - _steps.Length]).Holds(_world) ? '1' : '0';

    private (string Key, bool[] Steps, bool[] Events) StepsOf(ReadOnlySpan<char> key)
    {
        if (!_byStepKey.TryGetValue(key, out var found))
        {
            _byStepKey[key] = found = (key.ToString(), There(key[.._steps.Length]), There(key[_steps.Length..]));
        }

        return found;
    }

    private static bool[] There(ReadOnlySpan<char> signs)
    {
        var there = new bool[signs.Length];
        for (var i = 0; i < signs.Length; i++)
        {
            there[i] = signs[i] == '1';
        }

        return there;
    }

    private (string Key, decimal?[] Numbers) NumbersOf(ReadOnlySpan<char> key)
    {
        if (!_byLineKey.TryGetValue(key, out var found))
        {
            _byLineKey[key] = found = (key.ToString(), [.. key.ToArray().Zip(_lines, (sign, line) => line.Number(sign))]);
        }

        return found;
    }

    // A line's test and its number, which is worked out anew only where the value is another than last time.
    private sealed class Line(WorldTest test, int slot, Unit? unit)
    {
        private const char NotThere = (char)0;
        private readonly List<decimal> _seen = [];
        private Value? _last;
        private char _sign = NotThere;

        // Numbers are told apart by the order in which they first came.
        public char SignIn(DefiniteWorld world)
        {
            if (!test.Holds(world))
            {
                return NotThere;
            }

            if (slot < 0)
            {
                return Sign(1);
            }

            var value = world.ValueAt(slot);
            if (!ReferenceEquals(value, _last))
            {
                (_last, _sign) = (value, Quantities.Of(value, unit) is { } number ? Sign(number) : NotThere);
            }

            return _sign;
        }

        public decimal? Number(char sign) => sign == NotThere ? null : _seen[sign - 1];

        private char Sign(decimal number)
        {
            var at = _seen.IndexOf(number);
            if (at < 0)
            {
                _seen.Add(number);
                at = _seen.Count - 1;
            }

            return (char)(1 + at);
        }
    }
}
