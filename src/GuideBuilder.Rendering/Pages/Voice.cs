namespace GuideBuilder.Rendering.Pages;

/// <summary>How a page speaks: its language, and fixed phrases, days, ranges and answers as they are written in it.</summary>
internal sealed record Voice(string Language, Discretion May, Phrases Labels, Dates Dates, Ranges Ranges, AnswerWords Answers)
{
    /// <summary>The voice of a page in that language that may print so much. A page that is not translated speaks as the book in the original language does.</summary>
    internal static Voice Of(Plan plan, Guidance guidance, string language, Discretion may, FaultList faults)
    {
        var isPlain = language == LocalText.Original && !guidance.Language.IsOriginal;
        var labels = new Phrases(isPlain ? guidance.PlainLabels : guidance.Labels, faults, language);
        var dates = new Dates(labels, plan.Occasion.Edition == EditionKind.Public ? Applied(plan) : null);
        return new(language, may, labels, dates, new Ranges(labels), new AnswerWords(labels, dates, may));
    }

    // Weeks are counted from the application; where a plan has none, from its first day.
    private static LocalDate Applied(Plan plan) =>
        plan.Steps.Where(s => s.Step.Item.LoggedAs?.Event == LogKind.Applied).Select(s => s.Dates?.EarliestStart).FirstOrDefault(d => d is not null) ?? plan.Schedule.Start;
}
