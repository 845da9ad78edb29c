namespace GuideBuilder.Planning.Sequence;

/// <summary>A network as arrays of day numbers, ready to be run many times with other durations. Safe from several threads.</summary>
public sealed class CompiledNetwork
{
    internal const int Free = int.MinValue;
    private readonly Lazy<Ring?> _ring;

    internal CompiledNetwork(Network network, Horizon horizon)
    {
        Network = network;
        Horizon = horizon;
        var activities = network.Activities;
        Index = IndexOf(activities);
        Tables = [.. activities.Select(a => horizon.Table(a.Calendar))];
        Days = [.. activities.Select(a => a.Days)];
        IsDone = [.. activities.Select(a => a.IsDone)];
        FixedFinish = [.. activities.Select(FinishOf)];
        Release = [.. activities.Select(a => Math.Max(horizon.Day(horizon.Start), a.NotBefore is { } d ? horizon.Day(d) : 0))];
        FinishBy = [.. activities.Select(a => a.FinishBy is { } d ? horizon.Day(d) + (a.Days > 0 ? 1 : 0) : DayTable.Never)];
        Cells = new(this);
        Bounds = BoundsOf(network);
        Incoming = Rows.Of(activities.Length, Bounds, b => b.To);
        Outgoing = Rows.Of(activities.Length, Bounds, b => b.From);
        Order = Components.Order(this);
        Sequence = SequenceOf(Cells, Order);
        _ring = new(() => Rings.Find(this));
    }

    /// <summary>How many activities there are; spans given to the sequencer are this long and in the network's order.</summary>
    public int Count => Days.Length;

    /// <summary>The days that the plan may use.</summary>
    public Horizon Horizon { get; }

    /// <summary>Links that contradict each other whatever the dates, or null. Looked for when first asked, so that trials do not pay for it.</summary>
    public Ring? Ring => _ring.Value;

    /// <summary>The durations as the network gives them, in whole open days.</summary>
    public ReadOnlySpan<int> Durations => Days;

    internal Network Network { get; }

    internal Dictionary<string, int> Index { get; }

    internal DayTable[] Tables { get; }

    internal int[] Days { get; }

    internal bool[] IsDone { get; }

    internal int[] FixedFinish { get; }

    internal int[] Release { get; }

    internal int[] FinishBy { get; }

    internal Cells Cells { get; }

    internal Bound[] Bounds { get; }

    internal Rows Incoming { get; }

    internal Rows Outgoing { get; }

    internal Components Order { get; }

    /// <summary>The activities along the links.</summary>
    internal int[] Sequence { get; }

    /// <summary>The place of an activity in the network; an id that is not there is our own mistake and throws.</summary>
    public int IndexOf(string id) => Index.TryGetValue(id, out var i) ? i : throw new UnreachableException($"no activity {id}");

    internal string Id(int activity) => Network.Activities[activity].Id;

    /// <summary>The boundary at which an activity ends that starts on a day. A given day counts as worked even where its calendar is closed.</summary>
    internal int FinishFrom(int activity, int start, int days)
    {
        if (FixedFinish[activity] != Free)
        {
            return FixedFinish[activity];
        }

        return days == 0 ? start : Tables[activity].IsOpen(start) ? Tables[activity].After(start, days) : Tables[activity].After(start + 1, days - 1);
    }

    private int FinishOf(Activity a) => a.PinnedFinish is { } d ? Horizon.Day(d) + (a.Days > 0 ? 1 : 0) : Free;

    private static Dictionary<string, int> IndexOf(ImmutableArray<Activity> activities)
    {
        var index = new Dictionary<string, int>(activities.Length, StringComparer.Ordinal);
        for (var i = 0; i < activities.Length; i++)
        {
            index.Add(activities[i].Id, i);
        }

        return index;
    }

    private static int[] SequenceOf(Cells cells, Components order)
    {
        var sequence = new int[cells.Of.Length];
        var next = 0;
        for (var c = 0; c < order.Count; c++)
        {
            foreach (var cell in order[c])
            {
                cells.Members[cell].CopyTo(sequence, next);
                next += cells.Members[cell].Length;
            }
        }

        return sequence;
    }

    // In arrays of their size from the start: a large network has tens of thousands.
    private Bound[] BoundsOf(Network network)
    {
        var (precedences, maximals) = (network.Precedences, network.Maximals);
        var bounds = new Bound[precedences.Length + maximals.Length];
        for (var i = 0; i < precedences.Length; i++)
        {
            bounds[i] = Precedes(precedences[i], IndexOf(precedences[i].From), IndexOf(precedences[i].To));
        }

        for (var i = 0; i < maximals.Length; i++)
        {
            var m = maximals[i];
            bounds[precedences.Length + i] = new Bound(IndexOf(m.Later), IndexOf(m.Earlier), BoundKind.Within, m.Days, Horizon.Table(m.Calendar), false);
        }

        return bounds;
    }

    private Bound Precedes(Precedence p, int from, int to) => new(
        from,
        to,
        p.Kind == LinkKind.FinishToStart ? BoundKind.FinishToStart : BoundKind.StartToStart,
        p.Lag,
        Horizon.Table(p.LagCalendar),
        p.SameDay || (p.Lag == 0 && Cells.Of[from] == Cells.Of[to]));
}
