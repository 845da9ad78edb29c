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
    private readonly (WorldTest Test, int Slot, Unit? Unit)[] _lines;
    private readonly List<decimal>[] _numbers;

    /// <summary>Makes ready what depends on the world.</summary>
    public WorldContents(WayCase way, DefiniteWorld world, ImmutableArray<Planned<Step>> steps, ImmutableArray<Planned<Cost>> lines)
    {
        WorldTest TestOf(ItemState state, Rule rule) => state == ItemState.Settled ? WorldTest.Always : world.TestOf(rule.Head.AppliesIf);
        _world = world;
        _steps = [.. steps.Select(s => TestOf(s.State, s.Item))];
        _events = [.. steps.SelectMany((s, i) => s.Item.MayHappen.Select(e => WorldTest.All([_steps[i], world.TestOf(e.AppliesIf)])))];
        _lines = [.. lines.Select(c => (
            Quotations.Names(way.Facts.Answers, c.Item.Id, way.Occasion.Today) ? WorldTest.Always : TestOf(c.State, c.Item),
            c.Item.Quantity is { } name ? world.SlotOf(name) : -1,
            c.Item.Quantity is { } named ? Quantities.UnitOf(named, way.Guidance) : null))];
        _numbers = [.. lines.Select(_ => new List<decimal>())];
    }

    /// <summary>The contents of the world as it stands; the world may then go on to another.</summary>
    public WorldContent Read()
    {
        var (steps, events, numbers) = (Array.ConvertAll(_steps, s => s.Holds(_world)), Array.ConvertAll(_events, e => e.Holds(_world)), new decimal?[_lines.Length]);
        var key = new char[steps.Length + events.Length];
        for (var i = 0; i < key.Length; i++)
        {
            key[i] = (i < steps.Length ? steps[i] : events[i - steps.Length]) ? '1' : '0';
        }

        var lineKey = new char[numbers.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = NumberOf(_lines[i]);
            lineKey[i] = (char)(numbers[i] is { } number ? 1 + PlaceOf(number, _numbers[i]) : 0);
        }

        return new(new(key), new(lineKey), steps, events, numbers);
    }

    /// <summary>The contents of a world that differs from another in no more than the listed steps, events and lines; the other's where it differs in none.</summary>
    public WorldContent Read(WorldContent other, Affected affected)
    {
        var differs = false;
        foreach (var s in affected.Steps)
        {
            differs |= _steps[s].Holds(_world) != other.Steps[s];
        }

        foreach (var e in affected.Events)
        {
            differs |= _events[e].Holds(_world) != other.Events[e];
        }

        foreach (var l in affected.Lines)
        {
            differs |= NumberOf(_lines[l]) != other.Numbers[l];
        }

        return differs ? Read() : other;
    }

    private decimal? NumberOf((WorldTest Test, int Slot, Unit? Unit) line) =>
        !line.Test.Holds(_world) ? null : line.Slot < 0 ? 1 : Quantities.Of(_world.ValueAt(line.Slot), line.Unit);

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
}
