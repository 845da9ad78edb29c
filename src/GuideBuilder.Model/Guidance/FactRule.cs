namespace GuideBuilder.Model;

/// <summary>A derived fact: the value of the row that holds among rows that cannot overlap; unknown if none holds and one is open; else <see cref="Otherwise"/>.</summary>
public sealed record FactRule(RuleHead Head, QuestionKind Kind, ImmutableArray<string> Options, Unit? Unit, ImmutableArray<FactRow> Rows, Value? Otherwise) : Rule(Head);

/// <summary>One row of a derived fact.</summary>
public sealed record FactRow(Condition When, Value Value, Place Place);
