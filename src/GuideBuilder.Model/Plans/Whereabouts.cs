namespace GuideBuilder.Model;

/// <summary>
/// Where the household is today: how many dated steps are done, the step last done, what is late (a missed day first) and what can be begun now (each in order of its day), the gates before each payment, the clocks that run,
/// the dates given that cannot be kept, and the day since which the house has been without supply because a meeting broke off (null when it has not).
/// </summary>
public sealed record Whereabouts(
    int Done,
    int Dated,
    string? LastDone,
    ImmutableArray<LateItem> Late,
    ImmutableArray<NextItem> Next,
    ImmutableArray<Gate> Gates,
    ImmutableArray<RunningClock> Clocks,
    ImmutableArray<DateConflict> Conflicts,
    LocalDate? DarkSince)
{
    /// <summary>Nothing has happened, and nothing is to be done.</summary>
    public static Whereabouts None { get; } = new(0, 0, null, [], [], [], [], [], null);

    /// <summary>What each payment that has gates comes to.</summary>
    public ImmutableArray<GatedPayment> Payments { get; init; } = [];
}

/// <summary>A payment that should wait: the step that pays, and what one, five and nine in ten trials do not exceed of the lines that fall due with it.</summary>
public sealed record GatedPayment(string Step, ThreePoint Sum);

/// <summary>A step that is late, since which day, and by how many days of the year.</summary>
public sealed record LateItem(string Step, LateBecause Because, LocalDate Since, int Days);

/// <summary>How a step is late.</summary>
public enum LateBecause
{
    /// <summary>The date given for it has passed, and the log does not say what happened.</summary>
    DatePassed,

    /// <summary>The last day on which it could start and still meet the needed-by date has passed.</summary>
    LastDayPassed,

    /// <summary>The quotation that it waits to accept has run out.</summary>
    QuotationEnded,

    /// <summary>Its day was missed, and there is no new one.</summary>
    Missed,
}

/// <summary>A step for which nothing has to be waited for any more, and the day by which it must be done.</summary>
public sealed record NextItem(string Step, LocalDate By);

/// <summary>Something that should be settled before a payment: the step that pays, the step that settles it, how it stands, and when it is expected (null when undated).</summary>
public sealed record Gate(string Payment, string Step, GateState State, LocalDate? Expected);

/// <summary>How a gate stands.</summary>
public enum GateState
{
    /// <summary>It is done.</summary>
    Done,

    /// <summary>It is still to be done.</summary>
    NotYet,

    /// <summary>Nobody has said yet whether it applies.</summary>
    MayApply,

    /// <summary>The payment was made without it: a risk that was taken.</summary>
    LeftOpen,
}

/// <summary>A time limit that runs, or has run: the happening that started it, the day that counts as day 0, the day on which it falls due, the days late so far or when it ended, and the sum that the published text gives (null where none could be read).</summary>
public sealed record RunningClock(Clock Clock, LogEvent Started, LocalDate DayZero, LocalDate Due, int DaysLate, LocalDate? Ended, Quantity? Owed);

/// <summary>A date given that cannot be kept; it stands all the same. The first day on which it could be (null when only a closed day speaks against it), and the steps that lead there, first cause first.</summary>
public sealed record DateConflict(string Step, LocalDate Given, LocalDate? Earliest, ImmutableArray<string> Chain);
