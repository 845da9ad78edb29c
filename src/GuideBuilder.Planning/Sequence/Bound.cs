namespace GuideBuilder.Planning.Sequence;

/// <summary>What a bound does: the first two raise the start of the activity it points at, the last raises its finish.</summary>
internal enum BoundKind : byte
{
    /// <summary>Starts after the other has finished.</summary>
    FinishToStart,

    /// <summary>Starts after the other has started.</summary>
    StartToStart,

    /// <summary>Finishes at most so many days before the other starts; points from the later activity to the earlier.</summary>
    Within,
}

/// <summary>A link as arithmetic on day numbers: the activities by index, the wait, and the table that counts it.</summary>
internal readonly record struct Bound(int From, int To, BoundKind Kind, int Lag, DayTable Table, bool SameDay)
{
    /// <summary>The earliest start that this asks of the activity it points at.</summary>
    public int Raise(int fromStart, int fromFinish, DayTable toTable, int toDays) => Kind switch
    {
        BoundKind.FinishToStart => Table.After(Leaving(fromStart, fromFinish), Lag),
        BoundKind.StartToStart => Table.After(fromStart, Lag),
        _ => toTable.EarliestEndingAt(Table.EarliestWithin(fromStart, Lag), toDays),
    };

    /// <summary>The latest start that this allows the activity it comes from, given the latest dates of the one it points at.</summary>
    public int Cap(int toStart, int toFinish, DayTable fromTable, int fromDays) => Kind switch
    {
        BoundKind.FinishToStart => fromTable.Before(Table.Before(toStart, Lag) + (SameDay && fromDays > 0 ? 1 : 0), fromDays),
        BoundKind.StartToStart => Table.Before(toStart, Lag),
        _ => Table.LatestWithin(toFinish, Lag),
    };

    /// <summary>The boundary from which a follower waits: after the last day, or before it where it may share that day.</summary>
    private int Leaving(int start, int finish) => SameDay && finish > start ? finish - 1 : finish;
}
