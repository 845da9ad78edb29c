namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// The earliest date of everything, in the network's order, and the finish of the whole (the start, if there is nothing to do).
/// Timings are empty and the finish null where no dates exist at all: a ring, or no day left within the horizon.
/// With obstacles the dates are still the earliest that all else allows.
/// </summary>
public sealed record Forward
{
    internal Forward(CompiledNetwork compiled, int[] starts, int[] finishes, int[] drivers) =>
        (Compiled, Starts, Finishes, Drivers) = (compiled, starts, finishes, drivers);

    /// <summary>Earliest dates and drivers.</summary>
    public ImmutableArray<Timing> Timings { get; internal init; } = [];

    /// <summary>The last day of the whole.</summary>
    public LocalDate? Finish { get; internal init; }

    /// <summary>Why no dates keep every bound; empty where some do.</summary>
    public ImmutableArray<Obstacle> Obstacles { get; internal init; } = [];

    /// <summary>Dates given that cannot be met; they stand all the same.</summary>
    public ImmutableArray<Conflict> Conflicts { get; internal init; } = [];

    /// <summary>Links that contradict each other, or null.</summary>
    public Ring? Ring => Compiled.Ring;

    /// <summary>Whether dates exist that keep every link and bound, dates given apart (see Conflicts).</summary>
    public bool IsPossible => Ring is null && Obstacles.IsEmpty;

    /// <summary>The timing of an activity; one that is not there is our own mistake and throws.</summary>
    public Timing this[string id] => Timings[Compiled.IndexOf(id)];

    internal CompiledNetwork Compiled { get; }

    internal int[] Starts { get; }

    internal int[] Finishes { get; }

    internal int[] Drivers { get; }
}

/// <summary>When something is, ends included: a moment starts and finishes on one day. Earliest or latest, as its holder says.</summary>
public sealed record DaySpan(string Id, LocalDate Start, LocalDate Finish);

/// <summary>The earliest dates of an activity, ends included, and what decides its start.</summary>
public sealed record Timing(string Id, LocalDate Start, LocalDate Finish, Driver Driver);

/// <summary>
/// What decides a start. From: the activity whose date decides it. Via: the member of the same-day group that waits for it, where that is another than the activity itself.
/// Free: the day from which it could begin if the calendars of its crews did not ask for a later one.
/// </summary>
public sealed record Driver(DriverKind Kind, string? From, string? Via, LocalDate Free);

/// <summary>What kind of thing decides a start.</summary>
public enum DriverKind
{
    /// <summary>The start of the whole plan.</summary>
    Start,

    /// <summary>A day before which it may not start.</summary>
    NotBefore,

    /// <summary>The finish of another activity.</summary>
    Finish,

    /// <summary>The start of another activity.</summary>
    OtherStart,

    /// <summary>Another activity that may not start long after this one has finished.</summary>
    Within,

    /// <summary>The log: a date given.</summary>
    Given,

    /// <summary>The log: it is done.</summary>
    Done,
}

/// <summary>A date given that cannot be met: the day given, and the first day on which it could be (null when only a closed calendar or another date given to its group speaks against it), with the chain that leads there.</summary>
public sealed record Conflict(string Id, LocalDate Given, LocalDate? Earliest, ImmutableArray<Timing> Chain);

/// <summary>Why no dates exist: the activity that fails, the other party to it where there is one, the first day on which it could be and the last on which it may, and the chain that leads there, first cause first.</summary>
public sealed record Obstacle(ObstacleKind Kind, string Id, string? Other, LocalDate? Earliest, LocalDate? Latest, ImmutableArray<Timing> Chain);

/// <summary>Why no dates exist.</summary>
public enum ObstacleKind
{
    /// <summary>Two members of a same-day group never work on one day.</summary>
    NeverMeet,

    /// <summary>No day is left within three years.</summary>
    Horizon,

    /// <summary>It finishes after the day by which it must.</summary>
    FinishBy,

    /// <summary>It starts too long after another has finished, whose date stands in the log.</summary>
    TooLate,
}
