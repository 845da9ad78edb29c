using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Steps;

/// <summary>The dates of the steps in the base plan, and the sequence as a whole.</summary>
internal sealed record Scheduling(FrozenDictionary<string, StepDates> Dates, Schedule Schedule)
{
    /// <summary>Puts the steps of the assumed world on days. Null where the guidance allows no dates at all.</summary>
    public static (Scheduling? Scheduled, ImmutableArray<Fault> Faults) Of(WayCase way, ImmutableArray<Planned<Step>> planned, PartyCalendars calendars)
    {
        var inWorld = planned.Where(s => s.IsPresent && way.IsInWorld(s.Item)).Select(s => s.Item).ToImmutableArray();
        var answers = way.Facts.Answers;
        var network = StepNetwork.Of(inWorld, way.Guidance.Steps, calendars, answers.Log, Deadlines.NeededBy(answers));
        var passes = Passes.Of(network, Deadlines.Start(answers, way.Occasion.Today));
        var faults = inWorld.Where(s => !calendars.Has(s.Party)).Select(s => PlanningFaults.NoCalendar(s.Id, s.Party, s.Head.Place)).Concat(Stuck(network, passes.Forward)).ToImmutableArray();
        return (faults.IsEmpty ? Of(network, passes, Deadlines.NeededBy(answers)) : null, faults);
    }

    private static Scheduling Of(StepNetwork network, Passes passes, LocalDate? neededBy)
    {
        var dates = network.Steps.Select((s, i) => (s.Id, Dates: StepDating.Of(network, passes, i))).ToFrozenDictionary(x => x.Id, x => x.Dates, StringComparer.Ordinal);
        var goal = Deadlines.Goal(network.Steps).Select(s => dates[s.Id].FinishRange).ToArray();
        var finish = goal.Length == 0
            ? new DateRange(passes.Start, passes.Start, passes.Start)
            : new DateRange(goal.Max(r => r.Early), goal.Max(r => r.Likely), goal.Max(r => r.Late));
        return new(dates, new(
            passes.Start,
            finish,
            neededBy,
            FeasibilityOf(finish, neededBy),
            Drivers(network, passes, dates),
            Meetings.Of(network.Steps, dates),
            Hours.OffSupply(network.Steps),
            Hours.OfHousehold(network.Steps)));
    }

    private static Feasibility FeasibilityOf(DateRange finish, LocalDate? neededBy) => neededBy switch
    {
        null => Feasibility.NoDate,
        { } day when finish.Late <= day => Feasibility.MetEvenIfSlow,
        { } day when finish.Likely <= day => Feasibility.MetIfLikely,
        { } day when finish.Early <= day => Feasibility.OnlyIfQuick,
        _ => Feasibility.NotPossible,
    };

    // The chain that leads to the last of the goal's steps, first cause first.
    private static ImmutableArray<string> Drivers(StepNetwork network, Passes passes, FrozenDictionary<string, StepDates> dates)
    {
        var last = Deadlines.Goal(network.Steps).OrderBy(s => dates[s.Id].EarliestFinish).LastOrDefault();
        return last is null ? [] : [.. Chains.To(network.Steps.IndexOf(last), i => passes.Forward.Timings[i], passes.Forward.Compiled.IndexOf).Select(t => t.Id)];
    }

    private static IEnumerable<Fault> Stuck(StepNetwork network, Forward forward)
    {
        Place PlaceOf(string id) => network.Steps.First(s => s.Id == id).Head.Place;
        if (forward.Ring is { } ring)
        {
            var steps = ring.Links.Select(l => l.From);
            return [ring.Links.Any(l => l.IsWithin) ? PlanningFaults.RingOfLimits(steps, PlaceOf(steps.First())) : PlanningFaults.CircleOfSteps(steps, PlaceOf(steps.First()))];
        }

        return forward.Finish is not null
            ? []
            : forward.Obstacles.Select(o => PlanningFaults.NoCommonDay(new[] { o.Id, o.Other }.OfType<string>(), PlaceOf(o.Id)));
    }
}
