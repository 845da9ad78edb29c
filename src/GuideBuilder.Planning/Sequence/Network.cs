namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// Something that takes whole open days of its own calendar and starts on one of them; 0 days is a moment, which takes none and lets what follows start the same day.
/// A pinned finish says that it is done and keeps its dates whatever calendars and links say; a pinned start alone is a date given: both earliest and latest.
/// Members of a group that are not done start on one day, the earliest that all can.
/// </summary>
public sealed record Activity(
    string Id,
    WorkingCalendar Calendar,
    int Days,
    LocalDate? NotBefore,
    LocalDate? FinishBy,
    LocalDate? PinnedStart,
    LocalDate? PinnedFinish,
    string? Group)
{
    /// <summary>Whether it has happened.</summary>
    public bool IsDone => PinnedFinish is not null;

    /// <summary>Whether a date for it has been given that is still to come about.</summary>
    public bool IsGiven => PinnedStart is not null && PinnedFinish is null;
}

/// <summary>
/// The later activity starts once so many whole days of a calendar have passed after the earlier one has finished, or from the day on which it starts.
/// Same day: it may start on the last day of the earlier one; between members of a group, a link without a lag always may. Lag ≥ 0.
/// </summary>
public sealed record Precedence(string From, string To, LinkKind Kind, int Lag, WorkingCalendar LagCalendar, bool SameDay);

/// <summary>Between the finish of the earlier activity and the start of the later one pass at most so many whole days of a calendar.</summary>
public sealed record Maximal(string Earlier, string Later, int Days, WorkingCalendar Calendar);

/// <summary>What is to be put in order. Ids are unique; a link to an id that is not there is our own mistake and throws.</summary>
public sealed record Network(ImmutableArray<Activity> Activities, ImmutableArray<Precedence> Precedences, ImmutableArray<Maximal> Maximals);
