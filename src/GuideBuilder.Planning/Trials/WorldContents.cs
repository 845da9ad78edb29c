using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>What a world makes of a way: which of its steps there are, which of its chance events may happen, and for each line of money how many (null where the line is not there). The keys are the same for worlds that make the same of it.</summary>
internal sealed record WorldContent(string StepKey, string LineKey, bool[] Steps, bool[] Events, decimal?[] Numbers);

/// <summary>The steps, events and lines that may be otherwise when one answer is, and the questions that may then be asked otherwise, by their places.</summary>
internal sealed record Affected(ImmutableArray<int> Questions, ImmutableArray<int> Steps, ImmutableArray<int> Events, ImmutableArray<int> Lines);

/// <summary>Reads the contents of one world after another.</summary>
internal sealed class WorldContents
{
    private readonly DefiniteWorld _world;
    private readonly WorldTest[] _steps;
    private readonly WorldTest[] _events;
    private readonly Line[] _lines;
    private readonly List<decimal>[] _numbers;

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
        _numbers = [.. lines.Select(_ => new List<decimal>())];
    }

    /// <summary>The contents of the world as it stands; the world may then go on to another.</summary>
    public WorldContent Read()
    {
        var (steps, events, numbers) = (Array.ConvertAll(_steps, s => s.Holds(_world)), Array.ConvertAll(_events, e => e.Holds(_world)), Array.ConvertAll(_lines, l => l.Number(_world)));
        return new(StepKey(steps, events), LineKey(numbers), steps, events, numbers);
    }

    /// <summary>The contents of a world that differs from another in no more than the listed steps, events and lines; the other's where it differs in none.</summary>
    public WorldContent Read(WorldContent other, Affected affected)
    {
        var steps = Changed(other.Steps, affected.Steps, s => _steps[s].Holds(_world));
        var events = Changed(other.Events, affected.Events, e => _events[e].Holds(_world));
        var numbers = Changed(other.Numbers, affected.Lines, l => _lines[l].Number(_world));
        return steps == other.Steps && events == other.Events && numbers == other.Numbers ? other : new(
            steps == other.Steps && events == other.Events ? other.StepKey : StepKey(steps, events),
            numbers == other.Numbers ? other.LineKey : LineKey(numbers),
            steps,
            events,
            numbers);
    }

    // The same array where nothing in it is otherwise.
    private static T[] Changed<T>(T[] before, ImmutableArray<int> places, Func<int, T> now)
    {
        var changed = before;
        foreach (var at in places)
        {
            var value = now(at);
            if (!EqualityComparer<T>.Default.Equals(value, before[at]))
            {
                changed = changed == before ? [.. before] : changed;
                changed[at] = value;
            }
        }

        return changed;
    }

    private static string StepKey(bool[] steps, bool[] events) => string.Create(steps.Length + events.Length, (steps, events), (key, content) =>
    {
        for (var i = 0; i < key.Length; i++)
        {
            key[i] = (i < content.steps.Length ? content.steps[i] : content.events[i - content.steps.Length]) ? '1' : '0';
        }
    });

    private string LineKey(decimal?[] numbers)
    {
        var key = new char[numbers.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            key[i] = (char)(numbers[i] is { } number ? 1 + PlaceOf(number, _numbers[i]) : 0);
        }

        return new(key);
    }

    // Numbers of one line are told apart by the order in which they first came.
    private static int PlaceOf(decimal number, List<decimal> seen)
    {
        var at = seen.IndexOf(number);
        if (at < 0)
        {
            seen.Add(number);
            at = seen.Count - 1;
        }

        return at;
    }

    // A line's test and its number, which is worked out anew only where the value is another than last time.
    private sealed class Line(WorldTest test, int slot, Unit? unit)
    {
        private Value? _last;
        private decimal? _number;

        public decimal? Number(DefiniteWorld world)
        {
            if (!test.Holds(world))
            {
                return null;
            }

            if (slot < 0)
            {
                return 1;
            }

            var value = world.ValueAt(slot);
            if (!ReferenceEquals(value, _last))
            {
                (_last, _number) = (value, Quantities.Of(value, unit));
            }

            return _number;
        }
    }
}
