namespace GuideBuilder.Model;

/// <summary>One end of a range in a condition: a quantity or a date, and whether the end itself counts.</summary>
public sealed record Limit(Quantity? Quantity, LocalDate? Date, bool Included);
