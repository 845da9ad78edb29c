namespace GuideBuilder.Planning.Steps;

/// <summary>What is left of a day that broke off: supply comes back first, so that it waits for as little as it can.</summary>
internal static class BrokenDays
{
    /// <summary>The guidance with its steps as the log has left them: waits that do not count any more are dropped, a party that missed its turn comes again without its first wait, and what may stay apart is no turn any more.</summary>
    public static Guidance By(AnswerSet answers, Guidance guidance)
    {
        var pins = LogPins.Of(answers.Log, guidance.Steps);
        bool IsDone(string id) => pins.GetValueOrDefault(id)?.Done is not null;
        var begun = guidance.Steps.Where(s => s.Meeting is not null && IsDone(s.Id)).Select(s => s.Meeting).ToFrozenSet();
        if (begun.Count == 0)
        {
            return guidance;
        }

        var byId = guidance.Steps.ToFrozenDictionary(s => s.Id, StringComparer.Ordinal);
        bool IsApart(Step step) => !IsDone(step.Id) && !step.ApartAfter.IsEmpty && step.ApartAfter.All(IsDone);
        bool ComesAgain(Step step, Step before) => pins.GetValueOrDefault(step.Id)?.Missed is not null && before.Party == step.Party && before.Meeting is null;
        bool Waits(Step step, Link link) => byId[link.Step] is var before
            && (IsDone(before.Id) || !(link.NotOnceBegun || (begun.Contains(step.Meeting) && (ComesAgain(step, before) || (before.Meeting == step.Meeting && IsApart(before))))));
        return guidance with
        {
            Steps = [.. guidance.Steps.Select(s => IsDone(s.Id) ? s : s with { After = [.. s.After.Where(l => Waits(s, l))], Meeting = IsApart(s) ? null : s.Meeting })],
        };
    }
}
