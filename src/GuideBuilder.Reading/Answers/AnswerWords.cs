namespace GuideBuilder.Reading;

/// <summary>Words of the answers file that stand for something else than themselves.</summary>
internal static class AnswerWords
{
    /// <summary>The answer of somebody who does not know; always allowed.</summary>
    public const string Unknown = "unknown";

    /// <summary>The full name of the one question that must be answered.</summary>
    public const string Nation = "home.nation";

    /// <summary>The section of which at least one question must be answered.</summary>
    public const string Wish = "wish";
}
