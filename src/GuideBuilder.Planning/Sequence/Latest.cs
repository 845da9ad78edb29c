namespace GuideBuilder.Planning.Sequence;

/// <summary>The latest dates with which all still finishes by an end, in the network's order; they lie before the earliest where it cannot.</summary>
public sealed record Latest
{
    internal Latest(CompiledNetwork compiled, LocalDate end, int[] starts, int[] finishes) =>
        (Compiled, End, Starts, Finishes) = (compiled, end, starts, finishes);

    /// <summary>The last day on which anything may finish.</summary>
    public LocalDate End { get; }

    /// <summary>The latest dates, ends included.</summary>
    public ImmutableArray<DaySpan> Spans { get; internal init; } = [];

    /// <summary>The latest dates of an activity; one that is not there is our own mistake and throws.</summary>
    public DaySpan this[string id] => Spans[Compiled.IndexOf(id)];

    internal CompiledNetwork Compiled { get; }

    internal int[] Starts { get; }

    internal int[] Finishes { get; }
}

/// <summary>How far things can slip, in the network's order; groups in the order of their first member.</summary>
public sealed record Floats(ImmutableArray<ActivityFloat> Activities, ImmutableArray<GroupFloat> Groups);

/// <summary>
/// How many of its own open days later an activity can start: in all, before the end is missed (negative: by how many it is missed already), and freely, before any other activity or the finish of the whole moves.
/// What is done or given has none.
/// </summary>
public sealed record ActivityFloat(string Id, int Total, int Free);

/// <summary>The one float of a same-day group: the later days up to the latest on which all its members work.</summary>
public sealed record GroupFloat(string Group, ImmutableArray<LocalDate> Days)
{
    /// <summary>How many such days there are.</summary>
    public int Total => Days.Length;
}
