namespace GuideBuilder.Planning.Sequence;

/// <summary>Walks from a date back to its first cause, along what decided each.</summary>
internal static class Chains
{
    /// <summary>
    /// The timings that lead to an activity, first cause first, itself last; stops at the start, the log or a not-before day. Where the chain comes back to a day that it has passed already,
    /// because a longest wait pulls an earlier step along, it goes on with what asked most of that day from outside the chain.
    /// </summary>
    public static ImmutableArray<Timing> To(CompiledNetwork net, int activity, int[] starts, int[] finishes, int[] drivers)
    {
        var chain = new List<Timing>();
        var (seen, told) = (new HashSet<int>(), new HashSet<int>());
        for (int? at = activity; at is { } i && told.Add(i);)
        {
            seen.Add(net.Cells.Of[i]);
            chain.Add(TimingOf(net, i, starts, finishes, drivers));
            at = chain[^1].Driver.From is not { } from ? null : Outside(net, net.IndexOf(from), seen, starts, finishes);
        }

        chain.Reverse();
        return [.. chain];
    }

    // The activity itself where its day is new to the chain, else what asked most of that day among those that are new; null where nothing is.
    private static int? Outside(CompiledNetwork net, int activity, HashSet<int> seen, int[] starts, int[] finishes)
    {
        var cell = net.Cells.Of[activity];
        if (!seen.Contains(cell))
        {
            return activity;
        }

        var bounds = net.Cells.Members[cell].SelectMany(m => net.Incoming[m].ToArray()).Select(b => net.Bounds[b]).Where(b => b.Kind != BoundKind.Within && !seen.Contains(net.Cells.Of[b.From]));
        return bounds.Select(b => (b.From, Asked: b.Raise(starts[b.From], finishes[b.From], net.Tables[b.To], net.Days[b.To])))
            .OrderByDescending(b => b.Asked)
            .Select(b => (int?)b.From)
            .FirstOrDefault();
    }

    /// <summary>What decides the start of an activity, from the day numbers and drivers of a forward pass.</summary>
    public static Timing TimingOf(CompiledNetwork net, int activity, int[] starts, int[] finishes, int[] drivers)
    {
        var horizon = net.Horizon;
        var last = Math.Max(starts[activity], finishes[activity] - 1);
        return new(net.Id(activity), horizon.Date(starts[activity]), horizon.Date(last), DriverOf(net, activity, starts, finishes, drivers));
    }

    private static Driver DriverOf(CompiledNetwork net, int activity, int[] starts, int[] finishes, int[] drivers)
    {
        var cell = net.Cells.Of[activity];
        var driver = drivers[cell];
        if (net.Cells.Fixed[cell] != CompiledNetwork.Free)
        {
            return new(net.IsDone[activity] ? DriverKind.Done : DriverKind.Given, null, null, net.Horizon.Date(starts[activity]));
        }

        if (driver < 0)
        {
            var member = -2 - driver;
            var kind = driver == ForwardPass.Release ? DriverKind.Start : DriverKind.NotBefore;
            return new(kind, null, kind == DriverKind.NotBefore && member != activity ? net.Id(member) : null, net.Horizon.Date(net.Cells.Release[cell]));
        }

        var bound = net.Bounds[driver];
        var free = bound.Raise(starts[bound.From], finishes[bound.From], net.Tables[bound.To], net.Days[bound.To]);
        return new(KindOf(bound), net.Id(bound.From), bound.To == activity ? null : net.Id(bound.To), net.Horizon.Date(Math.Min(free, starts[activity])));
    }

    private static DriverKind KindOf(Bound bound) => bound.Kind switch
    {
        BoundKind.FinishToStart => DriverKind.Finish,
        BoundKind.StartToStart => DriverKind.OtherStart,
        _ => DriverKind.Within,
    };
}
