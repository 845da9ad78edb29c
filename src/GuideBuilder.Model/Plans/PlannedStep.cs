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
    string? DrivenBy);

/// <summary>The sequence as a whole: when it can start and finish, the wished date and whether it can be met, the chain of steps that decides the finish, and the day on which supply is off.</summary>
public sealed record Schedule(
    LocalDate Start,
    DateRange Finish,
    LocalDate? NeededBy,
    Feasibility Feasibility,
    ImmutableArray<string> DrivingSteps,
    ImmutableArray<MeetingDay> Meetings,
    ThreePoint OffSupplyHours,
    ThreePoint HouseholdHours);

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
public sealed record MeetingDay(string Meeting, LocalDate Day, DateRange Range, ImmutableArray<MeetingTurn> Turns);

/// <summary>One party's turn in a meeting, in hours after it begins.</summary>
public sealed record MeetingTurn(string Step, decimal Starts, decimal Ends, bool SupplyOff);
