namespace GuideBuilder.Planning.Steps;

/// <summary>A day that the home sets, and what must be there by then.</summary>
internal sealed record Deadline(NeededFor For, LocalDate Day);

/// <summary>Which days the home itself sets.</summary>
internal static class Deadlines
{
    /// <summary>The household's own day and the builder's, as far as they are known.</summary>
    public static ImmutableArray<Deadline> Of(AnswerSet answers) =>
    [
        .. Known.Date(answers, PlanReach.NeededBy) is { } power ? [new Deadline(NeededFor.PowerOn, power)] : ImmutableArray<Deadline>.Empty,
        .. Known.Date(answers, PlanReach.RoomNeededBy) is { } room ? [new Deadline(NeededFor.PlaceFree, room)] : ImmutableArray<Deadline>.Empty,
    ];

    /// <summary>The first day on which anything may start: today, or later where the household says so.</summary>
    public static LocalDate Start(AnswerSet answers, LocalDate today) =>
        Known.Date(answers, PlanReach.StartFrom) is { } from && from > today ? from : today;

    /// <summary>The steps on which such a day is judged.</summary>
    public static ImmutableArray<Step> Goal(ImmutableArray<Step> steps, NeededFor what) => Goal(steps) is var goal && what == NeededFor.PowerOn
        ? goal
        : [.. steps.Where(s => s.FreesPlace || goal.Contains(s))];

    /// <summary>The steps with which the power is on: those of the meetings; where nobody meets, all.</summary>
    public static ImmutableArray<Step> Goal(ImmutableArray<Step> steps)
    {
        var meetings = steps.Where(s => s.Meeting is not null).ToImmutableArray();
        return meetings.IsEmpty ? steps : meetings;
    }

    /// <summary>The finish of the goal where the steps end on those days; the start where there is nothing to do.</summary>
    public static LocalDate FinishIn(ImmutableArray<Step> steps, NeededFor what, ImmutableArray<LocalDate> ends, LocalDate start) =>
        Goal(steps, what).Select(s => ends[steps.IndexOf(s)]).DefaultIfEmpty(start).Max();
}
