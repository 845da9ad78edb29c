namespace GuideBuilder.Model;

/// <summary>The questionnaire as filled in, checked against the questions. <see cref="FileName"/> is the last part of the file's name.</summary>
public sealed record AnswerSet(
    string FileName,
    HandbookSettings Handbook,
    FrozenDictionary<string, Given.Answered> ByName,
    ImmutableArray<Paper> Papers,
    ImmutableArray<LogEvent> Log)
{
    /// <summary>The answer to the question of that full name (section.id); every question of the guidance has one, if only as unknown or not asked.</summary>
    public Given.Answered this[string name] => ByName[name];
}
