using GuideBuilder.Planning.Sequence;
using Activity = GuideBuilder.Planning.Sequence.Activity;

namespace GuideBuilder.Planning.Steps;

/// <summary>What cannot be kept: by when to apply for the needed-by date, and what would have to give where it or a limit between steps cannot be met.</summary>
internal static class Prospects
{
    private const string Goal = "the needed-by date";

    /// <summary>The schedule with the limits that gave way, the last safe day to apply, and the smallest change that would do where the base plan misses the date.</summary>
    public static Schedule Of(Schedule schedule, Scheduling scheduled, AnswerSet answers)
    {
        var told = schedule with { Limits = [.. Limits(scheduled, schedule.Start), .. Overrun(scheduled)], EarlyWorks = EarlyWorks(scheduled, answers) };
        return told.NeededBy is not { } day ? told : told with
        {
            LastSafe = LastSafe(scheduled),
            Change = told.Feasibility is Feasibility.OnlyIfQuick or Feasibility.NotPossible ? Change(scheduled.Network, told.NeededFor, told.Start, day) : null,
        };
    }

    // Turns of one meeting share a day, so that a limit on several of them is told once.
    private static IEnumerable<LimitConflict> Limits(Scheduling scheduled, LocalDate start) =>
        from broken in scheduled.Broken.DistinctBy(b => (b.Asked.Earlier, scheduled.Network.Steps.First(s => s.Id == b.Asked.Later).Meeting ?? b.Asked.Later, b.Asked.Days))
        let link = scheduled.Network.Steps.First(s => s.Id == broken.Asked.Earlier).NoLaterThan.First(l => l.Step == broken.Asked.Later)
        where !link.WherePossible
        let reason = Yielding.ReasonOf(scheduled.Network.Network, broken, new(start))
        select new LimitConflict(broken.Asked.Earlier, broken.Asked.Later, broken.Asked.Days, broken.Kept.Days, link.Of, reason.Chain, ToldOf(reason.Change));

    // A limit that runs from something done: no date can move it, so what comes too late is told.
    private static IEnumerable<LimitConflict> Overrun(Scheduling scheduled)
    {
        var network = scheduled.Network;
        var (steps, maximals) = (network.Steps.ToFrozenDictionary(s => s.Id, StringComparer.Ordinal), network.Network.Maximals);
        return
            from limit in maximals.DistinctBy(m => (m.Earlier, steps[m.Later].Meeting ?? m.Later, m.Days))
            let link = steps[limit.Earlier].NoLaterThan.First(l => l.Step == limit.Later)
            let ends = (From: scheduled.Dates[limit.Earlier], To: scheduled.Dates[limit.Later])
            where !link.WherePossible && ends.From.Done && !ends.To.Done && limit.Calendar.Add(ends.From.EarliestFinish, limit.Days) < ends.To.EarliestStart
            let least = Enumerable.Range(limit.Days, PlanReach.Years * 366).First(n => limit.Calendar.Add(ends.From.EarliestFinish, n) >= ends.To.EarliestStart)
            select new LimitConflict(
                limit.Earlier,
                limit.Later,
                limit.Days,
                least,
                link.Of,
                [.. Sequencer.ChainTo(scheduled.Passes.Forward, limit.Later).Select(t => t.Id)],
                new(ChangeOf.Validity, limit.Earlier, limit.Later, least - limit.Days));
    }

    // Works that begin while the old intake is in the way.
    private static EarlyWorks? EarlyWorks(Scheduling scheduled, AnswerSet answers)
    {
        var goal = Deadlines.Goal(scheduled.Network.Steps, NeededFor.PlaceFree);
        var dated = goal.Select(s => scheduled.Dates.GetValueOrDefault(s.Id)).OfType<StepDates>().ToArray();
        return Known.Date(answers, PlanReach.WorksStart) is { } starts && goal.Any(s => s.FreesPlace) && dated.Length == goal.Length && dated.Max(d => d.EarliestFinish) is var free && free > starts
            ? new(starts, free, scheduled.Trials.ShareBy(goal, starts))
            : null;
    }

    private static LastSafeDay? LastSafe(Scheduling scheduled)
    {
        var application = scheduled.Network.Steps.FirstOrDefault(s => s.LoggedAs?.Event == LogKind.Applied);
        return application is not null && scheduled.Dates[application.Id] is { Done: false } dates ? new(application.Id, dates.LatestStart) : null;
    }

    private static SmallestChange? Change(StepNetwork network, NeededFor what, LocalDate start, LocalDate day) =>
        ToldOf(Relaxation.Smallest(WithGoal(network, what, day), start, null));

    private static SmallestChange? ToldOf(Change? change) => change switch
    {
        null => null,
        { Kind: ChangeKind.LaterFinish } => new(ChangeOf.NeededBy, null, null, change.Days),
        _ => new(KindOf(change.Kind), change.Id, change.Other, change.Days),
    };

    // The date stands on one moment after all that must be ready, so that it can be moved as one.
    private static Network WithGoal(StepNetwork network, NeededFor what, LocalDate day)
    {
        var ready = Deadlines.Goal(network.Steps, what).Select(s => s.Id).ToArray();
        return network.Network with
        {
            Activities = [.. network.Network.Activities.Select(a => a with { FinishBy = null }), new Activity(Goal, WorkingCalendar.EveryDay, 0, null, day, null, null, null)],
            Precedences = [.. network.Network.Precedences, .. ready.Select(id => new Precedence(id, Goal, LinkKind.FinishToStart, 0, WorkingCalendar.EveryDay, true))],
        };
    }

    private static ChangeOf KindOf(ChangeKind kind) => kind switch
    {
        ChangeKind.ShorterWait => ChangeOf.Wait,
        ChangeKind.EarlierStart => ChangeOf.EarlierStart,
        ChangeKind.EarlierDate => ChangeOf.GivenDate,
        ChangeKind.ShorterDuration => ChangeOf.Duration,
        ChangeKind.LongerValidity => ChangeOf.Validity,
        ChangeKind.LaterFinish => ChangeOf.NeededBy,
        ChangeKind.AnyWeekday => ChangeOf.Weekdays,
        _ => throw new UnreachableException(),
    };
}
