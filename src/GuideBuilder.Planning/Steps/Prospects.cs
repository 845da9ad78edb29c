using GuideBuilder.Planning.Sequence;
using Activity = GuideBuilder.Planning.Sequence.Activity;

namespace GuideBuilder.Planning.Steps;

/// <summary>What the needed-by date asks: by when to apply, and what would have to give where it cannot be met.</summary>
internal static class Prospects
{
    private const string Goal = "the needed-by date";

    /// <summary>The schedule with the last safe day to apply, and the smallest change that would do where the base plan misses the date.</summary>
    public static Schedule Of(Schedule schedule, Scheduling scheduled) => schedule.NeededBy is not { } day ? schedule : schedule with
    {
        LastSafe = LastSafe(scheduled),
        Change = schedule.Feasibility is Feasibility.OnlyIfQuick or Feasibility.NotPossible ? Change(scheduled.Network, schedule.Start, day) : null,
    };

    private static LastSafeDay? LastSafe(Scheduling scheduled)
    {
        var application = scheduled.Network.Steps.FirstOrDefault(s => s.LoggedAs?.Event == LogKind.Applied);
        return application is not null && scheduled.Dates[application.Id] is { Done: false } dates ? new(application.Id, dates.LatestStart) : null;
    }

    private static SmallestChange? Change(StepNetwork network, LocalDate start, LocalDate day) =>
        Relaxation.Smallest(WithGoal(network, day), start, null) is not { } change ? null
        : change.Kind == ChangeKind.LaterFinish ? new(ChangeOf.NeededBy, null, null, change.Days)
        : new(KindOf(change.Kind), change.Id, change.Other, change.Days);

    // The date stands on one moment after all that must be ready, so that it can be moved as one.
    private static Network WithGoal(StepNetwork network, LocalDate day)
    {
        var ready = Deadlines.Goal(network.Steps).Select(s => s.Id).ToArray();
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
