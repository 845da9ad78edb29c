namespace GuideBuilder.Reading;

/// <summary>The words that guidance uses for kinds of answers, classes of data, and what it takes to find out.</summary>
internal static class QuestionWords
{
    /// <summary>The kinds of answers.</summary>
    public static (string Word, QuestionKind Means)[] Kinds { get; } =
    [
        ("choice", QuestionKind.Choice),
        ("several", QuestionKind.Several),
        ("yes-no", QuestionKind.YesNo),
        ("quantity", QuestionKind.Quantity),
        ("date", QuestionKind.Date),
        ("days", QuestionKind.Days),
        ("text", QuestionKind.Text),
        ("number-name", QuestionKind.NumberName),
    ];

    /// <summary>The classes of data.</summary>
    public static (string Word, DataClass Means)[] DataClasses { get; } =
    [
        ("none", DataClass.None),
        ("personal", DataClass.Personal),
        ("health", DataClass.Health),
        ("absence", DataClass.Absence),
        ("other-person", DataClass.OtherPerson),
    ];

    /// <summary>What it takes to find an answer out, the easiest first.</summary>
    public static (string Word, Ease Means)[] Eases { get; } =
    [
        ("look", Ease.Look),
        ("papers", Ease.Papers),
        ("ask", Ease.Ask),
        ("write", Ease.Write),
        ("visit", Ease.Visit),
    ];

    /// <summary>The options of every yes-no question, in order.</summary>
    public static ImmutableArray<string> YesAndNo { get; } = ["yes", "no"];
}
