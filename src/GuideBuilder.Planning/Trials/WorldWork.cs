using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>How long a step takes, and how many hours of work it is, in one world after another, where that follows from answers that are not known. For one thread.</summary>
internal sealed class WorldWork
{
    // The first sign of a step that is there.
    private const char First = '1';
    private readonly Step _step;
    private readonly int[] _slots;
    private readonly List<Model.Duration> _seen;
    private readonly Value?[] _last = [null, null, null];
    private ThreePoint? _hours;
    private char _sign = First;

    private WorldWork(int place, Step step, int[] slots) => (Step, _step, _slots, _seen) = (place, step, slots, [step.Takes]);

    /// <summary>The step's place.</summary>
    public int Step { get; }

    /// <summary>Those of the steps whose hours are not known.</summary>
    public static WorldWork[] Of(WayCase way, DefiniteWorld world, ImmutableArray<Planned<Step>> steps) =>
    [
        .. steps.Select((s, i) => (s.Item, Place: i))
            .Where(s => s.Item.Work is { } work && work.Names.Any(n => Derivation.FindIn(way.Facts, n).Standing == Standing.Unknown))
            .Select(s => new WorldWork(s.Place, s.Item, [.. s.Item.Work!.Names.Select(world.SlotOf)])),
    ];

    /// <summary>A sign for the days it takes in the world as it stands.</summary>
    public char SignIn(DefiniteWorld world)
    {
        Look(world);
        return _sign;
    }

    /// <summary>The days of a sign.</summary>
    public Model.Duration TakesBy(char sign) => _seen[sign - First];

    /// <summary>The household's hours there; nothing for a step of others, or where they are not worked out.</summary>
    public IEnumerable<(int Step, ThreePoint Hours)> HoursIn(DefiniteWorld world)
    {
        Look(world);
        return _hours is { } hours && _step.IsDuty ? [(Step, hours)] : [];
    }

    // What is the same as last time comes to the same.
    private void Look(DefiniteWorld world)
    {
        var same = true;
        for (var i = 0; i < _slots.Length; i++)
        {
            var value = world.ValueAt(_slots[i]);
            same &= value is not null && ReferenceEquals(value, _last[i]);
            _last[i] = value;
        }

        if (!same)
        {
            _hours = WorkDays.Hours(_last);
            var takes = _hours is { } hours ? WorkDays.Days(_step, hours) : _step.Takes;
            var at = _seen.FindIndex(d => d.Amount == takes.Amount);
            if (at < 0)
            {
                _seen.Add(takes);
                at = _seen.Count - 1;
            }

            _sign = (char)(First + at);
        }
    }
}
