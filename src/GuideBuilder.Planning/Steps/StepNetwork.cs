using GuideBuilder.Planning.Sequence;
using Activity = GuideBuilder.Planning.Sequence.Activity;

namespace GuideBuilder.Planning.Steps;

/// <summary>The steps of one way in one world as a network of activities, with the log's pins.</summary>
internal sealed record StepNetwork(ImmutableArray<Step> Steps, PartyCalendars Calendars, FrozenDictionary<string, Pin> Pins, Network Network)
{
    /// <summary>The network of those steps with likely durations; the steps that a deadline is judged on carry its day. A step whose party has no working day, or a limit on a step that is not there, is left out.</summary>
    public static StepNetwork Of(IEnumerable<Step> inWorld, FrozenDictionary<string, Step> all, PartyCalendars calendars, IEnumerable<LogEvent> log, ImmutableArray<Deadline> deadlines)
    {
        var steps = inWorld.Where(s => calendars.Has(s.Party)).ToImmutableArray();
        return Of(steps, all, calendars, LogPins.Of(log, all.Values), deadlines);
    }

    /// <summary>The same with pins that are known; every step's party has a working day.</summary>
    public static StepNetwork Of(ImmutableArray<Step> steps, FrozenDictionary<string, Step> all, PartyCalendars calendars, FrozenDictionary<string, Pin> pins, ImmutableArray<Deadline> deadlines)
    {
        var present = steps.Select(s => s.Id).ToFrozenSet(StringComparer.Ordinal);
        var goals = deadlines.Select(d => (d.Day, Steps: Deadlines.Goal(steps, d.For).Select(s => s.Id).ToFrozenSet(StringComparer.Ordinal))).ToArray();
        var bridges = new Bridges(present, all);
        return new(steps, calendars, pins, new(
            [.. steps.Select(s => ActivityOf(s, calendars, pins.GetValueOrDefault(s.Id), goals.Where(g => g.Steps.Contains(s.Id)).Select(g => (LocalDate?)g.Day).Min()))],
            [.. steps.SelectMany(s => bridges.Of(s).Select(l => PrecedenceOf(l, s, calendars)))],
            [.. steps.SelectMany(s => s.NoLaterThan.Where(l => present.Contains(l.Step)).Select(l => new Maximal(s.Id, l.Step, l.Before, calendars.OfLag(l.Of, l.Whose))))]));
    }

    /// <summary>Whole days that a step takes: hours take one day, a part of a day a whole one.</summary>
    public static int Days(Duration takes, Func<ThreePoint, decimal> point) =>
        takes.Unit == DayCount.Hours ? 1 : (int)decimal.Ceiling(point(takes.Amount));

    /// <summary>The durations of all steps at one of their three points, in the network's order.</summary>
    public int[] Durations(Func<ThreePoint, decimal> point) => [.. Steps.Select(s => Days(s.Takes, point))];

    private static Activity ActivityOf(Step step, PartyCalendars calendars, Pin? pin, LocalDate? finishBy) => new(
        step.Id,
        calendars.Of(step),
        Days(step.Takes, t => t.Likely),
        pin?.Missed is { } missed ? calendars.Again(step, missed) : null,
        finishBy,
        pin?.Done ?? pin?.Given,
        pin?.Done,
        step.Meeting);

    private static Precedence PrecedenceOf(Link link, Step step, PartyCalendars calendars) =>
        new(link.Step, step.Id, link.Kind, link.Lag, calendars.OfLag(link.Of, link.Whose), link.SameDay);
}
