namespace GuideBuilder.Reading;

/// <summary>The words of the log and of papers.</summary>
internal static class LogWords
{
    /// <summary>What may have happened.</summary>
    public static (string Word, LogKind Means)[] Happenings { get; } =
    [
        ("applied", LogKind.Applied),
        ("surveyed", LogKind.Surveyed),
        ("quoted", LogKind.Quoted),
        ("accepted", LogKind.Accepted),
        ("paid", LogKind.Paid),
        ("date-given", LogKind.DateGiven),
        ("missed", LogKind.Missed),
        ("done", LogKind.Done),
        ("refused", LogKind.Refused),
        ("noted", LogKind.Noted),
    ];

    /// <summary>What a paper may be.</summary>
    public static (string Word, PaperKind Means)[] Papers { get; } =
    [
        ("quotation", PaperKind.Quotation),
        ("certificate", PaperKind.Certificate),
        ("consent", PaperKind.Consent),
        ("plans", PaperKind.Plans),
        ("survey", PaperKind.Survey),
        ("letter", PaperKind.Letter),
    ];

    /// <summary>The word for a happening.</summary>
    public static string Of(LogKind kind) => Happenings.First(h => h.Means == kind).Word;
}
