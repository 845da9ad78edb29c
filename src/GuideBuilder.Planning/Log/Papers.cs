using GuideBuilder.Planning.Steps;

namespace GuideBuilder.Planning.Log;

/// <summary>What the papers held say of what has happened.</summary>
internal static class Papers
{
    /// <summary>The answers with a happening for each quotation that stands and that the log does not speak of: it came on its day, and holds until its last one.</summary>
    public static AnswerSet Told(AnswerSet answers, ImmutableArray<Step> steps, LocalDate today)
    {
        var quotations = answers.Papers.Where(p => p is { Kind: PaperKind.Quotation, Dated: not null } && p.Dated <= today && !(p.ValidUntil < today) && IsAwaited(p, answers.Log, steps));
        return answers with { Log = [.. answers.Log, .. quotations.Select(Event)] };
    }

    // Asked for, and neither logged nor overtaken by what the log says of the same party.
    private static bool IsAwaited(Paper paper, ImmutableArray<LogEvent> log, ImmutableArray<Step> steps) =>
        steps.FirstOrDefault(s => s.LoggedAs is { Event: LogKind.Quoted, With: var with } && with == paper.From) is { } quoted
        && !log.Any(e => e.What is LogKind.Quoted or LogKind.Accepted && (e.Party ?? PartyOf(e, steps)) == paper.From)
        && !log.Any(e => e.What == LogKind.Done && LogMatch.Speaks(e, quoted, steps));

    private static string? PartyOf(LogEvent e, ImmutableArray<Step> steps) =>
        steps.FirstOrDefault(s => e.Step is { } id ? s.Id == id : s.LoggedAs?.Event == e.What) is { } step ? step.LoggedAs?.With ?? step.Party : null;

    private static LogEvent Event(Paper paper) =>
        new(paper.Dated!.Value, LogKind.Quoted, null, paper.From, null, null, paper.ValidUntil, paper.Reference, null, paper.Place);
}
