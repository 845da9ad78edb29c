namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// All that a network and a start say. Latest dates run from the deadline, or from the plan's own finish without one; they and the floats are null where no dates exist.
/// The driving chain leads to the finish of the whole, first cause first. Margin: open days of the last activity's calendar between finish and deadline, negative where it is missed.
/// Last safe start: the last day on which the whole may begin and still meet the deadline.
/// </summary>
public sealed record Outcome(
    Verdict Verdict,
    Forward Forward,
    Latest? Latest,
    Floats? Floats,
    ImmutableArray<Timing> DrivingChain,
    LocalDate? Deadline,
    int Margin,
    LocalDate? LastSafeStart);

/// <summary>What came out.</summary>
public enum Verdict
{
    /// <summary>Dates exist, and no deadline was asked for.</summary>
    NoDeadline,

    /// <summary>The deadline is met.</summary>
    Met,

    /// <summary>Dates exist, but the deadline is missed.</summary>
    Missed,

    /// <summary>No dates keep every bound: see the obstacles.</summary>
    Impossible,

    /// <summary>The links contradict each other whatever the dates: see the ring.</summary>
    Contradictory,
}
