using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Steps;

/// <summary>The dates of the steps in the base plan, the sequence as a whole, and the trials that its ranges come from.</summary>
internal sealed record Scheduling(FrozenDictionary<string, StepDates> Dates, Schedule Schedule, TrialRun Trials, StepNetwork Network, Passes Passes)
{
    /// <summary>Puts the steps of the assumed world on days. Null where the guidance allows no dates at all.</summary>
    public static (Scheduling? Scheduled, ImmutableArray<Fault> Faults) Of(WayCase way, ImmutableArray<Planned<Step>> planned, PartyCalendars calendars, Effort effort, int trials)
    {
        var present = planned.Where(s => s.IsPresent).ToImmutableArray();
        var answers = way.Facts.Answers;
        var start = Deadlines.Start(answers, way.Occasion.Today);
        var network = StepNetwork.Of(present.Select(s => s.Item).Where(way.IsInWorld), way.StepsById, calendars, answers.Log, Deadlines.NeededBy(answers));
        var passes = Passes.Of(network, start);
        var faults = present.Select(s => s.Item).Where(s => !calendars.Has(s.Party))
            .Select(s => PlanningFaults.NoCalendar(s.Id, s.Party, s.Head.Place))
            .Concat(Stuck(network, passes.Forward))
            .ToImmutableArray();
        if (!faults.IsEmpty)
        {
            return (null, faults);
        }

        var run = TrialRun.Of(way, planned, calendars, effort, trials);
        return (Of(network, passes, run, Deadlines.NeededBy(answers), Quickest(way, present, calendars, start)), faults);
    }

    private static Scheduling Of(StepNetwork network, Passes passes, TrialRun trials, LocalDate? neededBy, LocalDate quickest)
    {
        var dates = network.Steps.Select((s, i) => (s.Id, Dates: StepDating.Of(network, passes, trials, i))).ToFrozenDictionary(x => x.Id, x => x.Dates, StringComparer.Ordinal);
        var likely = Deadlines.Goal(network.Steps).Select(s => dates[s.Id].EarliestFinish).DefaultIfEmpty(passes.Start).Max();
        return new(
            dates,
            new(
                passes.Start,
                trials.Range(trials.Finish),
                neededBy,
                FeasibilityOf(Deadlines.FinishIn(network.Steps, passes.Slow, passes.Start), likely, quickest, neededBy),
                Drivers(network, passes, dates),
                Meetings.Of(network.Steps, dates),
                Hours.OffSupply(network.Steps),
                trials.HouseholdHours)
            { BaseFinish = likely },
            trials,
            network,
            passes);
    }

    // Before this day no world reaches the goal: it has all settled steps, and where only open ones meet, nothing is known.
    private static LocalDate Quickest(WayCase way, ImmutableArray<Planned<Step>> present, PartyCalendars calendars, LocalDate start)
    {
        var settled = present.Where(s => s.State == ItemState.Settled).Select(s => s.Item).ToArray();
        return present.Any(s => s.Item.Meeting is not null) && settled.All(s => s.Meeting is null)
            ? start
            : Passes.Quickest(StepNetwork.Of(settled, way.StepsById, calendars, way.Facts.Answers.Log, null), start);
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
    private static ImmutableArray<string> Drivers(StepNetwork network, Passes passes, FrozenDictionary<string, StepDates> dates)
    {
        var last = Deadlines.Goal(network.Steps).OrderBy(s => dates[s.Id].EarliestFinish).LastOrDefault();
        return last is null ? [] : [.. Sequencer.ChainTo(passes.Forward, last.Id).Select(t => t.Id)];
    }

    private static IEnumerable<Fault> Stuck(StepNetwork network, Forward forward)
    {
        Place PlaceOf(string id) => network.Steps.First(s => s.Id == id).Head.Place;
        if (forward.Ring is { } ring)
        {
            var steps = ring.Links.Select(l => l.From).ToArray();
            return [ring.Links.Any(l => l.IsWithin) ? PlanningFaults.RingOfLimits(steps, PlaceOf(steps[0])) : PlanningFaults.CircleOfSteps(steps, PlaceOf(steps[0]))];
        }

        return forward.Finish is not null
            ? []
            : forward.Obstacles.Select(o => PlanningFaults.NoCommonDay(new[] { o.Id, o.Other }.OfType<string>(), PlaceOf(o.Id)));
    }
}
