using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Log;

/// <summary>What is late today.</summary>
internal static class Lateness
{
    /// <summary>What is late, the longest first, then in guidance order. Of what has not begun only that is named for which nothing else has to be waited for: the rest is late because of it. Where nothing has happened yet nothing is late: the plan begins today, and whether it meets the wished day is said elsewhere.</summary>
    public static IEnumerable<LateItem> Of(WayPlan plan, ImmutableArray<PlannedStep> dated, ImmutableArray<NextItem> next)
    {
        var today = plan.Case.Occasion.Today;
        var begin = next.Select(n => n.Step).ToFrozenSet(StringComparer.Ordinal);
        return dated.Where(s => !s.Dates!.Done)
            .Select(s => Reason(s, plan, begin.Contains(s.Step.Item.Id)) is { } late && late.Since < today
                ? new LateItem(s.Step.Item.Id, late.Because, late.Since, Period.DaysBetween(late.Since, today))
                : null)
            .OfType<LateItem>()
            .OrderByDescending(l => l.Days);
    }

    private static (LateBecause Because, LocalDate Since)? Reason(PlannedStep step, WayPlan plan, bool canBegin)
    {
        var (dates, log) = (step.Dates!, plan.Case.Facts.Answers.Log);
        return dates.DateGiven is { } given ? (LateBecause.DatePassed, given)
            : plan.Scheduling.Network.Pins.GetValueOrDefault(step.Step.Item.Id)?.Missed is { } missed ? (LateBecause.Missed, missed)
            : step.Step.Item.LoggedAs?.Event == LogKind.Accepted && Term(step.Step.Item, log, plan) is { } last && last < plan.Case.Occasion.Today ? (LateBecause.QuotationEnded, last)
            : canBegin && !log.IsEmpty && plan.Schedule.NeededBy is not null ? (LateBecause.LastDayPassed, dates.LatestStart)
            : null;
    }

    // The end of the quotation that this step would accept: that of the party that it would accept it from.
    private static LocalDate? Term(Step accepts, IEnumerable<LogEvent> log, WayPlan plan)
    {
        var steps = plan.Case.Guidance.Steps;
        var quoted = steps.FirstOrDefault(s => s.LoggedAs is { Event: LogKind.Quoted, With: var with } && with == accepts.LoggedAs!.With);
        return quoted is null ? null : LogMatch.Last(quoted, log, steps, e => e.ValidUntil is not null)?.ValidUntil;
    }
}
