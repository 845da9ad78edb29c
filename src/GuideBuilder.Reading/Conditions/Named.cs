namespace GuideBuilder.Reading;

/// <summary>Something that a condition may ask about: what its value looks like, where the name comes from, and (for a question) its number in the order of asking.</summary>
internal sealed record Named(string Name, QuestionKind Kind, ImmutableArray<string> Options, Unit? Unit, NameSource From, int Order);

/// <summary>Where a name in a condition comes from.</summary>
internal enum NameSource
{
    /// <summary>A question of the questionnaire.</summary>
    Question,

    /// <summary>A derived fact.</summary>
    Fact,

    /// <summary>A calculator.</summary>
    Calculator,

    /// <summary>The way under consideration.</summary>
    Way,

    /// <summary>The finished plan.</summary>
    FinishedPlan,
}
