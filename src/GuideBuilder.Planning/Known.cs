namespace GuideBuilder.Planning;

/// <summary>Answers that the planner itself asks for, by the name of the question.</summary>
internal static class Known
{
    /// <summary>The known answer of that name; null when unknown, not asked, or no question of this guidance.</summary>
    public static Value? Of(AnswerSet answers, string name) => answers.ByName.TryGetValue(name, out var answer) ? answer.Value : null;

    /// <summary>The known date of that name.</summary>
    public static LocalDate? Date(AnswerSet answers, string name) => (Of(answers, name) as Value.Day)?.Date;

    /// <summary>The known option of that name.</summary>
    public static string? Option(AnswerSet answers, string name) => (Of(answers, name) as Value.Option)?.Id;
}
