namespace GuideBuilder.Model;

/// <summary>A step of the chosen way; dates are null where the step is open outside the assumed world (it may apply, undated) or ruled out.</summary>
public sealed record PlannedStep(Planned<Step> Step, StepDates? Dates);

/// <summary>A step's dates in the base plan, ends included: earliest and latest start and finish, float in the party's own working days, what the log says, the latest day to book, and the step that decides its start (null when today or a bound does).</summary>
public sealed record StepDates(
    LocalDate EarliestStart,
    LocalDate EarliestFinish,
    LocalDate LatestStart,
    LocalDate LatestFinish,
    DateRange StartRange,
    DateRange FinishRange,
    int TotalFloat,
    int FreeFloat,
    bool Done,
    LocalDate? DateGiven,
    LocalDate BookBy,
    string? DrivenBy)
{
    /// <summary>What kind of thing decides the start.</summary>
    public Decider Decider { get; init; }

    /// <summary>The other turn of its meeting that waits for what decides the start; null where it waits itself.</summary>
    public string? Via { get; init; }

    /// <summary>The day from which it could start if the calendars of its crews did not ask for a later one.</summary>
    public LocalDate FreeFrom { get; init; }
}

/// <summary>What kind of thing decides a start.</summary>
public enum Decider
{
    /// <summary>The first day of the plan.</summary>
    Start,

    /// <summary>A day before which its party cannot come again.</summary>
    NotBefore,

    /// <summary>The finish of another step.</summary>
    Finish,

    /// <summary>The start of another step.</summary>
    OtherStart,

    /// <summary>A step that may not start long after this one has finished.</summary>
    Within,

    /// <summary>A date given.</summary>
    Given,

    /// <summary>It is done.</summary>
    Done,

    /// <summary>A step that the readers of the edition are not told of.</summary>
    Untold,
}

/// <summary>The sequence as a whole: when it can start and finish, the wished date and whether it can be met, the chain of steps that decides the finish, and the day on which supply is off.</summary>
public sealed record Schedule(
    LocalDate Start,
    DateRange Finish,
    LocalDate? NeededBy,
    Feasibility Feasibility,
    ImmutableArray<string> DrivingSteps,
    ImmutableArray<MeetingDay> Meetings,
    ThreePoint OffSupplyHours,
    ThreePoint HouseholdHours)
{
    /// <summary>What has to be there by the needed-by date; of two dates the one that leaves less time.</summary>
    public NeededFor NeededFor { get; init; }

    /// <summary>The day of the base plan on which that is there; null without a needed-by date.</summary>
    public LocalDate? ReadyOn { get; init; }

    /// <summary>The finish of the base plan, in which every unknown answer is the one that means more work, with likely durations.</summary>
    public LocalDate BaseFinish { get; init; }

    /// <summary>The last day on which the application may be sent and the needed-by date still be met with likely durations; it lies in the past where it is too late. Null without a needed-by date, or once it has been sent.</summary>
    public LastSafeDay? LastSafe { get; init; }

    /// <summary>The smallest single change with which the needed-by date would be met; null where it is met, or where no single change would do.</summary>
    public SmallestChange? Change { get; init; }

    /// <summary>The limits between steps that no dates can keep, in the order of the steps.</summary>
    public ImmutableArray<LimitConflict> Limits { get; init; } = [];

    /// <summary>The steps for which no day is left within the reach of a plan, so that nothing still to come has a date; empty where everything has one.</summary>
    public ImmutableArray<string> Stuck { get; init; } = [];
}

/// <summary>
/// A limit that cannot be kept: between the step and the other should pass at most so many days of a count, and so many pass at the least. Why: the steps between them, each of which waits for the one before it.
/// The smallest single change with which it could be kept; null where none alone would do.
/// </summary>
public sealed record LimitConflict(string Step, string Other, int Most, int Least, DayCount Of, ImmutableArray<string> Chain, SmallestChange? Change);

/// <summary>What a needed-by date asks for.</summary>
public enum NeededFor
{
    /// <summary>The last day on which crews meet is over; where none meet, everything is done.</summary>
    PowerOn,

    /// <summary>That, and the present place is free.</summary>
    PlaceFree,
}

/// <summary>A step, and the last day on which it may start.</summary>
public sealed record LastSafeDay(string Step, LocalDate Day);

/// <summary>One loosening that would do: of what kind, of which step (null for the needed-by date), after which other step where it is a link, and by how many days.</summary>
public sealed record SmallestChange(ChangeOf Of, string? Step, string? Other, int Days);

/// <summary>What would be loosened.</summary>
public enum ChangeOf
{
    /// <summary>A wait before the step, after the other; in days of the link.</summary>
    Wait,

    /// <summary>The day before which its party cannot come again.</summary>
    EarlierStart,

    /// <summary>A date given, made earlier.</summary>
    GivenDate,

    /// <summary>The step itself, made shorter; in its party's working days.</summary>
    Duration,

    /// <summary>How long the step may come after the other.</summary>
    Validity,

    /// <summary>The needed-by date, made later.</summary>
    NeededBy,

    /// <summary>The weekdays on which its party comes.</summary>
    Weekdays,
}

/// <summary>Whether the needed-by date can be met.</summary>
public enum Feasibility
{
    /// <summary>No date is needed.</summary>
    NoDate,

    /// <summary>Met even when every step takes its longest.</summary>
    MetEvenIfSlow,

    /// <summary>Met with likely durations, missed with the longest.</summary>
    MetIfLikely,

    /// <summary>Missed with likely durations, met with the shortest.</summary>
    OnlyIfQuick,

    /// <summary>Missed even with every duration at its shortest.</summary>
    NotPossible,
}

/// <summary>A day on which several parties must come in order: the meeting's id, its day in the base plan, the range, and the steps in order with their hours from the first arrival (start and finish, hours after the meeting begins).</summary>
public sealed record MeetingDay(string Meeting, LocalDate Day, DateRange Range, ImmutableArray<MeetingTurn> Turns)
{
    /// <summary>What has to be done (step ids) or answered (section.id) before the day may be fixed; empty when nothing holds it back.</summary>
    public ImmutableArray<string> HeldFor { get; init; } = [];

    /// <summary>The crews still to come, each with the last day on which it can be called off free of charge; empty once the day is over.</summary>
    public ImmutableArray<EveCall> Eve { get; init; } = [];

    /// <summary>What to do when one crew drops out on the eve, by crew.</summary>
    public ImmutableArray<DropOut> DropOuts { get; init; } = [];

    /// <summary>What can go wrong on the day, with the next possible day after each.</summary>
    public ImmutableArray<PlannedMishap> Mishaps { get; init; } = [];

    /// <summary>Whether the day may not be fixed yet.</summary>
    public bool IsHeld => !HeldFor.IsEmpty;
}

/// <summary>A crew on the eve: the last day to call it off free of charge, and the cost lines that a call too late brings.</summary>
public sealed record EveCall(string Party, LocalDate FreeUntil, ImmutableArray<string> Costs);

/// <summary>A crew that drops out on the eve: whom to call off, each by its own day, and the next day on which all could come.</summary>
public sealed record DropOut(string Party, ImmutableArray<EveCall> CallOff, LocalDate NextDay);

/// <summary>Something that can go wrong on the day, and the next day on which all could come if it does.</summary>
public sealed record PlannedMishap(Mishap Mishap, LocalDate NextDay);

/// <summary>One party's turn in a meeting, in hours after it begins.</summary>
public sealed record MeetingTurn(string Step, decimal Starts, decimal Ends, bool SupplyOff);
