namespace GuideBuilder.Model;

/// <summary>A publication that a rule or figure rests on; the address is the publisher's own, or empty.</summary>
public sealed record Source(string Id, LocalText Title, string Publisher, string Edition, string Year, string Section, string Address, Mark Mark, LocalDate? Checked, Place Place);

/// <summary>A glossary entry: the term, what else it is called, and what it means (CommonMark).</summary>
public sealed record Term(string Id, LocalText Word, ImmutableArray<LocalText> Also, LocalText Meaning, ImmutableArray<string> Sources, Place Place);
