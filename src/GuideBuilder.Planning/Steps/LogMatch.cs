namespace GuideBuilder.Planning.Steps;

/// <summary>Which steps an entry of the log speaks of.</summary>
internal static class LogMatch
{
    /// <summary>Whether an entry speaks of a step: it names it; or it names none, and the step is the one that such a happening with that party stands for; or a party gave or missed its turn in a meeting.</summary>
    public static bool Speaks(LogEvent entry, Step step, IReadOnlyList<Step> all) =>
        entry.Step is { } id ? step.Id == id
        : step.LoggedAs is { } logged && logged.Event == entry.What ? logged.With == entry.Party || (entry.Party is null && all.Count(s => s.LoggedAs?.Event == entry.What) == 1)
        : entry.What is LogKind.DateGiven or LogKind.Missed && step.Meeting is not null && step.Party == entry.Party;

    /// <summary>The latest entry of a kind that speaks of a step; null when there is none.</summary>
    public static LogEvent? Last(Step step, IEnumerable<LogEvent> log, IReadOnlyList<Step> all, Func<LogEvent, bool> which) =>
        log.Where(e => which(e) && Speaks(e, step, all)).OrderBy(e => e.On).LastOrDefault();
}
