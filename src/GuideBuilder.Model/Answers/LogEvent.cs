namespace GuideBuilder.Model;

/// <summary>Something that has happened: on which day, what, to which step, by which party; for a given date the date given, for money the sum, for a quotation its last valid day.</summary>
public sealed record LogEvent(
    LocalDate On,
    LogKind What,
    string? Step,
    string? Party,
    LocalDate? DateGiven,
    Value.Amount? Amount,
    LocalDate? ValidUntil,
    string? Reference,
    string? Note,
    Place Place)
{
    /// <summary>Whether it reached the other side after five in the afternoon, so that its clock starts on the next working day.</summary>
    public bool AfterFive { get; init; }
}

/// <summary>What kind of thing has happened.</summary>
public enum LogKind
{
    /// <summary>An application was sent.</summary>
    Applied,

    /// <summary>Somebody came to look.</summary>
    Surveyed,

    /// <summary>A quotation came.</summary>
    Quoted,

    /// <summary>A quotation was accepted.</summary>
    Accepted,

    /// <summary>Money was paid.</summary>
    Paid,

    /// <summary>A party gave a date.</summary>
    DateGiven,

    /// <summary>A party did not come on the date it gave.</summary>
    Missed,

    /// <summary>A step is done.</summary>
    Done,

    /// <summary>A party refused or rejected something.</summary>
    Refused,

    /// <summary>Anything else worth keeping.</summary>
    Noted,
}
