using System.Collections.Concurrent;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>Every step that some world of a way may have. Dates and links are made once for all of them; the network of a world is a choice among them.</summary>
internal sealed class StepPool(ImmutableArray<Planned<Step>> planned, WayCase way, PartyCalendars calendars, Horizon horizon)
{
    private readonly FrozenDictionary<string, int> _places = planned.Select((s, i) => (s.Item.Id, i)).ToFrozenDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);
    private readonly FrozenDictionary<string, Pin> _pins = LogPins.Of(way.Facts.Answers.Log, way.StepsById.Values);
    private readonly ConcurrentDictionary<string, PartNetwork> _byPins = new(StringComparer.Ordinal);

    /// <summary>The steps, in guidance order; the numbers of all that follows.</summary>
    public ImmutableArray<Step> Steps { get; } = [.. planned.Select(s => s.Item)];

    /// <summary>The number of a step; -1 for one that no world has.</summary>
    public int PlaceOf(Step step) => _places.GetValueOrDefault(step.Id, -1);

    /// <summary>The days of the plan.</summary>
    public Horizon Horizon => horizon;

    /// <summary>The days in which an event's delay is counted: every day, or those of the step's party.</summary>
    public DayTable TableOf(DrawnEvent e) => horizon.Table(e.Event.TakesMore is { Unit: DayCount.CalendarDays } ? WorkingCalendar.EveryDay : calendars.Of(Steps[e.Step].Party));

    /// <summary>The network of which the steps that are present are a part, without a needed-by date.</summary>
    public PartNetwork Of(bool[] present)
    {
        var pins = _pins.Count == 0 ? _pins : Steps.Where((s, i) => present[i] && _pins.ContainsKey(s.Id)).ToFrozenDictionary(s => s.Id, s => _pins[s.Id], StringComparer.Ordinal);
        return _byPins.GetOrAdd(KeyOf(pins), _ => Make(pins));
    }

    // What is pinned is present, so that networks with the same pins differ only in steps that nothing is said of.
    private string KeyOf(FrozenDictionary<string, Pin> pins) =>
        pins.Count == 0 ? "" : string.Join('|', Steps.Where(s => pins.ContainsKey(s.Id)).Select(s => Invariant($"{s.Id} {pins[s.Id]}")));

    private PartNetwork Make(FrozenDictionary<string, Pin> pins) =>
        new(Sequencer.Compile(StepNetwork.Of(Steps, way.StepsById, calendars, pins, []).Network, horizon));
}
