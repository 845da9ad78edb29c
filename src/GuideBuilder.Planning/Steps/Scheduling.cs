using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Steps;

/// <summary>The dates of the steps in the base plan, the sequence as a whole, and the trials that its ranges come from.</summary>
internal sealed record Scheduling(FrozenDictionary<string, StepDates> Dates, Schedule Schedule, TrialRun Trials, StepNetwork Network, Passes Passes)
{
    /// <summary>The limits that gave way in the network.</summary>
    public ImmutableArray<BrokenLimit> Broken { get; init; } = [];

    /// <summary>Puts the steps of the assumed world on days; limits that cannot be kept give way. Null where the guidance allows no dates at all.</summary>
    public static (Scheduling? Scheduled, ImmutableArray<Fault> Faults) Of(WayCase way, ImmutableArray<Planned<Step>> planned, PartyCalendars calendars, Effort effort, int trials)
    {
        var present = planned.Where(s => s.IsPresent).ToImmutableArray();
        var answers = way.Facts.Answers;
        var start = Deadlines.Start(answers, way.Occasion.Today);
        var asked = StepNetwork.Of(present.Select(s => s.Item).Where(way.IsInWorld), way.StepsById, calendars, answers.Log, Deadlines.Of(answers));
        var (kept, broken) = Yielding.Of(asked.Network, new(start));
        var network = asked with { Network = kept };
        var passes = Passes.Of(network, start);
        var faults = present.Select(s => s.Item).Where(s => !calendars.Has(s.Party))
            .Select(s => PlanningFaults.NoCalendar(s.Id, s.Party, s.Head.Place))
            .Concat(Impossible(network, passes.Forward, calendars))
            .ToImmutableArray();
        if (!faults.IsEmpty)
        {
            return (null, faults);
        }

        var needed = passes.Forward.Finish is null ? null : Tightest(Deadlines.Of(answers), network, passes);
        var what = needed?.For ?? NeededFor.PowerOn;
        var run = TrialRun.Of(way, [.. planned.Select(s => s with { Item = Yielded(s.Item, broken) })], calendars, what, effort, trials);
        var scheduled = passes.Forward.Finish is null ? Undated(network, passes, run) : Of(network, passes, run, needed, Quickest(way, present, calendars, what, start));
        return (scheduled with { Broken = broken }, faults);
    }

    private static Step Yielded(Step step, ImmutableArray<BrokenLimit> broken) => step with
    {
        NoLaterThan = [.. step.NoLaterThan.Select(l => l with { Before = l.Before + broken.Where(b => b.Asked.Earlier == step.Id && b.Asked.Later == l.Step).Sum(b => b.Extra) })],
    };

    // No day is left for something, because of days on which nobody is at home or days given: what is done keeps its day, and nothing else has one.
    private static Scheduling Undated(StepNetwork network, Passes passes, TrialRun trials)
    {
        static StepDates On(LocalDate day) => new(day, day, day, day, new(day, day, day), new(day, day, day), 0, 0, true, null, day, null);
        return new(
            network.Pins.Where(p => p.Value.Done is not null).ToFrozenDictionary(p => p.Key, p => On(p.Value.Done!.Value), StringComparer.Ordinal),
            new(passes.Start, trials.Range(trials.Finish), null, Feasibility.NoDate, [], [], Hours.OffSupply(network.Steps), trials.HouseholdHours)
            {
                BaseFinish = trials.Horizon.End,
                Stuck = [.. passes.Forward.Obstacles.SelectMany(o => new[] { o.Id, o.Other }).OfType<string>().Distinct(StringComparer.Ordinal)],
            },
            trials,
            network,
            passes);
    }

    // The deadline that leaves the fewest days in the base plan; of two that leave as many the one that asks for more.
    private static Deadline? Tightest(ImmutableArray<Deadline> deadlines, StepNetwork network, Passes passes) => deadlines
        .OrderBy(d => Period.DaysBetween(Ready(network, passes, d.For), d.Day))
        .ThenByDescending(d => d.For)
        .FirstOrDefault();

    private static LocalDate Ready(StepNetwork network, Passes passes, NeededFor what) =>
        Deadlines.FinishIn(network.Steps, what, [.. passes.Forward.Timings.Select(t => t.Finish)], passes.Start);

    private static Scheduling Of(StepNetwork network, Passes passes, TrialRun trials, Deadline? needed, LocalDate quickest)
    {
        var dates = network.Steps.Select((s, i) => (s.Id, Dates: StepDating.Of(network, passes, trials, i))).ToFrozenDictionary(x => x.Id, x => x.Dates, StringComparer.Ordinal);
        var what = needed?.For ?? NeededFor.PowerOn;
        var ready = Ready(network, passes, what);
        return new(
            dates,
            new(
                passes.Start,
                trials.Range(trials.Finish),
                needed?.Day,
                FeasibilityOf(Deadlines.FinishIn(network.Steps, what, passes.Slow, passes.Start), ready, quickest, needed?.Day),
                Drivers(network, passes, what, dates),
                Meetings.Of(network.Steps, dates),
                Hours.OffSupply(network.Steps),
                trials.HouseholdHours)
            { BaseFinish = Ready(network, passes, NeededFor.PowerOn), NeededFor = what, ReadyOn = needed is null ? null : ready },
            trials,
            network,
            passes);
    }

    // Before this day no world reaches the goal: it has all settled steps, and where only open ones meet, nothing is known.
    private static LocalDate Quickest(WayCase way, ImmutableArray<Planned<Step>> present, PartyCalendars calendars, NeededFor what, LocalDate start)
    {
        var settled = present.Where(s => s.State == ItemState.Settled).Select(s => s.Item).ToArray();
        return present.Any(s => s.Item.Meeting is not null) && settled.All(s => s.Meeting is null)
            ? start
            : Passes.Quickest(StepNetwork.Of(settled, way.StepsById, calendars, way.Facts.Answers.Log, []), what, start);
    }

    private static Feasibility FeasibilityOf(LocalDate slow, LocalDate likely, LocalDate quickest, LocalDate? neededBy) => neededBy switch
    {
        null => Feasibility.NoDate,
        { } day when LocalDate.Max(slow, likely) <= day => Feasibility.MetEvenIfSlow,
        { } day when likely <= day => Feasibility.MetIfLikely,
        { } day when quickest <= day => Feasibility.OnlyIfQuick,
        _ => Feasibility.NotPossible,
    };

    // The chain that leads to the last of the goal's steps, first cause first.
    private static ImmutableArray<string> Drivers(StepNetwork network, Passes passes, NeededFor what, FrozenDictionary<string, StepDates> dates)
    {
        var last = Deadlines.Goal(network.Steps, what).OrderBy(s => dates[s.Id].EarliestFinish).LastOrDefault();
        return last is null ? [] : [.. Sequencer.ChainTo(passes.Forward, last.Id).Select(t => t.Id)];
    }

    // What no home's answers are to blame for: steps that wait for each other, and parties that share no weekday.
    private static IEnumerable<Fault> Impossible(StepNetwork network, Forward forward, PartyCalendars calendars)
    {
        Step StepOf(string id) => network.Steps.First(s => s.Id == id);
        if (forward.Ring is { } ring)
        {
            var steps = ring.Links.Select(l => l.From).ToArray();
            return [PlanningFaults.CircleOfSteps(steps, StepOf(steps[0]).Head.Place)];
        }

        return forward.Obstacles
            .Where(o => o is { Kind: ObstacleKind.NeverMeet, Other: { } other } && !calendars.Of(StepOf(o.Id).Party).Weekdays.Overlaps(calendars.Of(StepOf(other).Party).Weekdays))
            .Select(o => PlanningFaults.NoCommonDay([o.Id, o.Other!], StepOf(o.Id).Head.Place));
    }
}
