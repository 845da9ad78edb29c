using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>What a world makes of a way: which of its steps there are, which of its chance events may happen, and for each line of money how many (null where the line is not there). The keys are the same for worlds that make the same of it.</summary>
internal sealed record WorldContent(string StepKey, string LineKey, bool[] Steps, bool[] Events, decimal?[] Numbers)
{
    /// <summary>How long those steps take whose days are otherwise in another world.</summary>
    public ImmutableArray<(int Step, Model.Duration Takes)> Takes { get; init; } = [];

    /// <summary>The household's hours in those steps.</summary>
    public ImmutableArray<(int Step, ThreePoint Hours)> Work { get; init; } = [];

    /// <summary>The same for worlds with the same hours.</summary>
    public string WorkKey => Work.IsEmpty ? "" : string.Join(' ', Work);
}

/// <summary>The steps, events and lines that may be otherwise when one answer is, and the questions that may then be asked otherwise, by their places.</summary>
internal sealed record Affected(ImmutableArray<int> Questions, ImmutableArray<int> Steps, ImmutableArray<int> Events, ImmutableArray<int> Lines)
{
    /// <summary>Whether nothing but questions can be otherwise.</summary>
    public bool IsNothing => Steps.IsEmpty && Events.IsEmpty && Lines.IsEmpty;
}

/// <summary>Reads the contents of one world after another. What is the same in several is made once, so that ten thousand worlds take little room. For one thread.</summary>
internal sealed class WorldContents
{
    private const char NotThere = '0';
    private const char There = '1';
    private readonly DefiniteWorld _world;
    private readonly WorldTest[] _steps;
    private readonly WorldTest[] _events;
    private readonly WorldWork[] _work;
    private readonly WorldWork?[] _workOf; // by step
    private readonly Line[] _lines;
    private readonly char[] _stepKey;
    private readonly char[] _lineKey;
    private readonly Dictionary<string, StepContent>.AlternateLookup<ReadOnlySpan<char>> _byStepKey =
        new Dictionary<string, StepContent>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();

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
        _work = WorldWork.Of(way, world, steps);
        _workOf = [.. steps.Select((_, i) => Array.Find(_work, w => w.Step == i))];
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

        return ContentOf(StepsOf(_stepKey), NumbersOf(_lineKey)) with { Work = [.. _work.Where(w => _stepKey[w.Step] != NotThere).SelectMany(w => w.HoursIn(_world))] };
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
            steps ? StepsOf(_stepKey) : new(other.StepKey, other.Steps, other.Events, other.Takes),
            lines ? NumbersOf(_lineKey) : (other.LineKey, other.Numbers)) with
        { Work = other.Work };
    }

    private static WorldContent ContentOf(StepContent steps, (string Key, decimal?[] Numbers) lines) =>
        new(steps.Key, lines.Key, steps.Steps, steps.Events, lines.Numbers) { Takes = steps.Takes };

    private static bool Put(char[] key, int at, char sign)
    {
        var other = key[at] != sign;
        key[at] = sign;
        return other;
    }

    // Of a step, or of an event further on.
    private char SignOf(int place) =>
        !(place < _steps.Length ? _steps[place] : _events[place - _steps.Length]).Holds(_world) ? NotThere
        : place < _workOf.Length && _workOf[place] is { } work ? work.SignIn(_world)
        : There;

    private StepContent StepsOf(ReadOnlySpan<char> key)
    {
        if (!_byStepKey.TryGetValue(key, out var found))
        {
            var signs = key.ToString();
            _byStepKey[key] = found = new(
                signs,
                AreThere(key[.._steps.Length]),
                AreThere(key[_steps.Length..]),
                [.. _work.Where(w => signs[w.Step] != NotThere).Select(w => (w.Step, w.TakesBy(signs[w.Step])))]);
        }

        return found;
    }

    private static bool[] AreThere(ReadOnlySpan<char> signs)
    {
        var there = new bool[signs.Length];
        for (var i = 0; i < signs.Length; i++)
        {
            there[i] = signs[i] != NotThere;
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

    private sealed record StepContent(string Key, bool[] Steps, bool[] Events, ImmutableArray<(int Step, Model.Duration Takes)> Takes);

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
