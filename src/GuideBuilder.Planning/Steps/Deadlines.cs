namespace GuideBuilder.Planning.Steps;

/// <summary>Which days the home itself sets.</summary>
internal static class Deadlines
{
    /// <summary>The day on which what is wished for must be there: the earlier of the household's own and the builder's; null when there is none.</summary>
    public static LocalDate? NeededBy(AnswerSet answers) =>
        new[] { Known.Date(answers, PlanReach.NeededBy), Known.Date(answers, PlanReach.RoomNeededBy) }.Min();

    /// <summary>The first day on which anything may start: today, or later where the household says so.</summary>
    public static LocalDate Start(AnswerSet answers, LocalDate today) =>
        Known.Date(answers, PlanReach.StartFrom) is { } from && from > today ? from : today;

    /// <summary>The steps on which the needed-by date is judged: those of the last meeting; where nobody meets, all.</summary>
    public static ImmutableArray<Step> Goal(ImmutableArray<Step> steps)
    {
        var meetings = steps.Where(s => s.Meeting is not null).ToImmutableArray();
        return meetings.IsEmpty ? steps : meetings;
    }

    /// <summary>The finish of the goal where the steps end on those days; the start where there is nothing to do.</summary>
    public static LocalDate FinishIn(ImmutableArray<Step> steps, ImmutableArray<LocalDate> ends, LocalDate start) =>
        Goal(steps).Select(s => ends[steps.IndexOf(s)]).DefaultIfEmpty(start).Max();
}
