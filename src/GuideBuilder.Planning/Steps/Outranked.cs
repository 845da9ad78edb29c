namespace GuideBuilder.Planning.Steps;

/// <summary>Waits and limits as this home has them: an answer outranks the common figure, and a quotation's own term outranks both.</summary>
internal static class Outranked
{
    /// <summary>The guidance with its steps' links as this home has them.</summary>
    public static Guidance By(AnswerSet answers, Guidance guidance) => guidance with { Steps = [.. guidance.Steps.Select(s => By(answers, s, guidance.Steps))] };

    /// <summary>The days that an answer gives, a part of a day left out; null when it is not known.</summary>
    public static int? Days(AnswerSet answers, string? question) =>
        question is not null && Known.Of(answers, question) is Value.Amount { Quantity: var days } ? (int)decimal.Floor(days.Amount) : null;

    private static Step By(AnswerSet answers, Step step, ImmutableArray<Step> all)
    {
        var term = LogMatch.Last(step, answers.Log, all, e => e is { What: LogKind.Quoted, ValidUntil: not null });
        return step.NoLaterThan.IsEmpty && step.After.All(l => l.Or is null) ? step : step with
        {
            After = [.. step.After.Select(l => Days(answers, l.Or) is { } days ? l with { Lag = days } : l)],
            NoLaterThan = [.. step.NoLaterThan.Select(l => Limit(l, term, Days(answers, l.Or)))],
        };
    }

    private static LatestLink Limit(LatestLink link, LogEvent? term, int? answered) =>
        term is { ValidUntil: { } last } ? link with { Before = Period.DaysBetween(term.On, last), Of = DayCount.CalendarDays, Whose = null }
        : answered is { } days ? link with { Before = days }
        : link;
}
