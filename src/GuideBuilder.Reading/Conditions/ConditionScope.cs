namespace GuideBuilder.Reading;

/// <summary>Which names a condition may use where it stands, and how a fault says so.</summary>
internal sealed record ConditionScope(string Says, ImmutableArray<NameSource> Sources, int Before = int.MaxValue)
{
    private static readonly ImmutableArray<NameSource> FromAnswers = [NameSource.Question, NameSource.Fact, NameSource.Calculator];

    /// <summary>For ways, among which the planner chooses.</summary>
    public static ConditionScope Ways { get; } = new("A way may ask about answers, facts and calculators.", FromAnswers);

    /// <summary>For most entries.</summary>
    public static ConditionScope Rules { get; } = new("This entry may ask about answers, facts, calculators and the way.", [.. FromAnswers, NameSource.Way]);

    /// <summary>For hazards, which may look at the finished plan.</summary>
    public static ConditionScope Hazards { get; } = new("A hazard may ask about everything.", [.. FromAnswers, NameSource.Way, NameSource.FinishedPlan]);

    /// <summary>For a question: only questions asked before it.</summary>
    public static ConditionScope Earlier(int order) => new("A question may ask about earlier questions only.", [NameSource.Question], order);

    /// <summary>Whether the name may stand here.</summary>
    public bool Allows(Named named) => Sources.Contains(named.From) && named.Order < Before;
}
