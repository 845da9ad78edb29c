namespace GuideBuilder.Model;

/// <summary>A task in the sequence; one whose party is the household is a duty. Texts are CommonMark.</summary>
public sealed record Step(
    RuleHead Head,
    string Party,
    Duration Takes,
    ImmutableArray<Link> After,
    ImmutableArray<LatestLink> NoLaterThan,
    string? Meeting,
    int Order,
    ThreePoint? Hours,
    bool SupplyOff,
    LocalText About,
    LocalText HowTo,
    LocalText DoneWhen,
    LocalText IfItGoesWrong,
    LocalText WhoInstead,
    ImmutableArray<string> Costs,
    ImmutableArray<string> Hazards,
    ImmutableArray<string> Needs,
    ImmutableArray<string> Makes,
    string? Letter) : Rule(Head)
{
    /// <summary>Whether the step falls to the household.</summary>
    public bool IsDuty => Party == Model.Party.Household;

    /// <summary>Parties on whose working days it must fall as well, because it asks something of them: ringing an office.</summary>
    public ImmutableArray<string> OnDaysOf { get; init; } = [];

    /// <summary>The happening in a log that speaks of this step even where it does not name it; null for none.</summary>
    public LoggedAs? LoggedAs { get; init; }

    /// <summary>The steps of which each shows, once it is done, that this one is done as well: nobody answers what was not asked.</summary>
    public ImmutableArray<string> DoneWith { get; init; } = [];

    /// <summary>The turns of its meeting once all of which are done it is a turn no more: it is done on a day of its own, and the others do not wait for it.</summary>
    public ImmutableArray<string> ApartAfter { get; init; } = [];

    /// <summary>The lines (cost ids) that show what others ask who may do a duty instead.</summary>
    public ImmutableArray<string> InsteadPays { get; init; } = [];

    /// <summary>Whether it must be done again for each new day of a meeting that it has to come shortly before.</summary>
    public bool EachTime { get; init; }

    /// <summary>Whether the present place is free only once it is done.</summary>
    public bool FreesPlace { get; init; }

    /// <summary>How long after a missed or failed day its party can come again, in the party's working days; null when that is not known.</summary>
    public Duration? Again { get; init; }

    /// <summary>Whether there is voltage from this step on, at the isolator and behind it, though the house may still be dark.</summary>
    public bool PutsSupplyOn { get; init; }

    /// <summary>What may go wrong with it, or happen besides.</summary>
    public ImmutableArray<ChanceEvent> MayHappen { get; init; } = [];

    /// <summary>The hours of work from which its days follow; null where its days are only stated.</summary>
    public HandWork? Work { get; init; }
}

/// <summary>Work by the hour: the names of its least, likely and most hours, and how many hours fill a working day. Where a home gives no such hours, the stated days count.</summary>
public sealed record HandWork(string Least, string Likely, string Most, decimal ADay)
{
    /// <summary>The three names.</summary>
    public ImmutableArray<string> Names => [Least, Likely, Most];
}

/// <summary>Something that may happen in a step: its id (unique in the guidance), on which condition it can, with what probability (0 to 1, a judgement unless its mark says otherwise), how much longer the step then takes (null for no longer), and the costs of which it brings the one that is in the plan. They are no lines of the base plan.</summary>
public sealed record ChanceEvent(string Id, LocalText Title, Condition AppliesIf, decimal Chance, Duration? TakesMore, ImmutableArray<string> Costs, LocalText Because, Basis Basis, Place Place);

/// <summary>A kind of happening with a party: a quotation from the network operator.</summary>
public sealed record LoggedAs(LogKind Event, string With);

/// <summary>How long a step takes. Working days are the party's own; calendar days run every day; hours take one working day.</summary>
public sealed record Duration(ThreePoint Amount, DayCount Unit, Basis Basis);

/// <summary>Whose days a duration or a lag is counted in.</summary>
public enum DayCount
{
    /// <summary>Days on which the named party works.</summary>
    WorkingDays,

    /// <summary>Every day.</summary>
    CalendarDays,

    /// <summary>Hours of the clock.</summary>
    Hours,
}

/// <summary>This step comes after another, from its finish or its start, with a wait of whole days; working days name whose (a party id).</summary>
public sealed record Link(string Step, LinkKind Kind, int Lag, DayCount Of, string? Whose, bool SameDay, Place Place)
{
    /// <summary>The question (section.id, in days) whose answer outranks the lag; null for none.</summary>
    public string? Or { get; init; }

    /// <summary>On which condition the step waits for the other at all; in a home where nobody knows, as the assumed world has it.</summary>
    public Condition If { get; init; } = Condition.Always;

    /// <summary>Whether it waits no more once a day of crews has begun and broken off: supply comes back first.</summary>
    public bool NotOnceBegun { get; init; }
}

/// <summary>From which end of the earlier step a link runs.</summary>
public enum LinkKind
{
    /// <summary>Starts after the other has finished.</summary>
    FinishToStart,

    /// <summary>Starts after the other has started.</summary>
    StartToStart,
}

/// <summary>This step may not finish more than so many days before another starts: a hole not open too long, a quotation not stale.</summary>
public sealed record LatestLink(string Step, int Before, DayCount Of, string? Whose, Place Place)
{
    /// <summary>The question (section.id, in days) whose answer outranks the limit; null for none.</summary>
    public string? Or { get; init; }

    /// <summary>Whether the limit is only a wish to have the two near each other: where it cannot be kept, nothing is said.</summary>
    public bool WherePossible { get; init; }
}
