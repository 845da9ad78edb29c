using GuideBuilder.Planning.Calendars;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Log;

/// <summary>The published time limits that the log has started.</summary>
internal static class RunningClocks
{
    /// <summary>Each clock of the plan for each happening that starts it, in guidance order, then by date.</summary>
    public static IEnumerable<RunningClock> Of(WayPlan plan, PartyCalendars calendars) =>
        from clock in plan.Clocks
        where clock.IsPresent && calendars.Has(clock.Item.Party)
        from started in plan.Case.Facts.Answers.Log.Where(e => Starts(e, clock.Item, plan)).OrderBy(e => e.On)
        select Run(clock.Item, started, plan, calendars);

    private static RunningClock Run(Clock clock, LogEvent started, WayPlan plan, PartyCalendars calendars)
    {
        var reading = ClockRunner.Start(started.On, started.AfterFive, clock.Limit, clock.Of, calendars.Of(clock.Party));
        var ended = plan.Case.Facts.Answers.Log.Where(e => e.On >= started.On && Ends(e, clock, plan)).Select(e => (LocalDate?)e.On).Min();
        var late = reading.DaysLate(ended ?? plan.Case.Occasion.Today);
        return new(clock, started, reading.DayZero, reading.Due, late, ended, Owed(clock.Sum, late));
    }

    private static Quantity? Owed(ClockSum? sum, int late) => sum?.For switch
    {
        null => null,
        SumFor.Failure => sum.Amount,
        SumFor.Lateness => late > 0 ? sum.Amount : null,
        SumFor.EachDayLate => late > 0 ? sum.Amount with { Amount = sum.Amount.Amount * late } : null,
        _ => throw new UnreachableException(),
    };

    // A crew that misses one of its turns misses the day, so the clock on any of them starts.
    private static bool Starts(LogEvent e, Clock clock, WayPlan plan) => clock.StartsAtStep is { } id
        ? StepOf(id, plan) is { } step && (Speaks(e, clock.StartsAt, step, plan) || MissesMeeting(e, clock.StartsAt, step, plan))
        : e.What == clock.StartsAt && (e.Party is null || e.Party == clock.Party);

    private static bool Ends(LogEvent e, Clock clock, WayPlan plan) => clock.EndsAt is { } kind
        && (clock.EndsAtStep is { } id ? StepOf(id, plan) is { } step && Speaks(e, kind, step, plan) : e.What == kind && e.Party == clock.Party);

    // What is said to be done has been applied for, accepted or quoted as well.
    private static bool Speaks(LogEvent e, LogKind kind, Step step, WayPlan plan) =>
        (e.What == kind || (e.What == LogKind.Done && kind is not (LogKind.Missed or LogKind.Refused))) && LogMatch.Speaks(e, step, plan.Case.Guidance.Steps);

    private static bool MissesMeeting(LogEvent e, LogKind kind, Step step, WayPlan plan) =>
        kind == LogKind.Missed && e.What == kind && e.Step is { } other && StepOf(other, plan) is { Meeting: not null } turn && turn.Meeting == step.Meeting && turn.Party == step.Party;

    private static Step? StepOf(string id, WayPlan plan) => plan.Case.StepsById.GetValueOrDefault(id);
}
