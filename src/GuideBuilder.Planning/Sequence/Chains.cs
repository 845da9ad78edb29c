namespace GuideBuilder.Planning.Sequence;

/// <summary>Walks from a date back to its first cause, along what decided each.</summary>
internal static class Chains
{
    /// <summary>The timings that lead to an activity, first cause first, itself last; stops at the start, the log, a not-before day, or an activity that comes again.</summary>
    public static ImmutableArray<Timing> To(int activity, Func<int, Timing> timingOf, Func<string, int> indexOf)
    {
        var chain = new List<Timing>();
        var seen = new HashSet<int>();
        for (int? at = activity; at is { } i && seen.Add(i);)
        {
            chain.Add(timingOf(i));
            at = chain[^1].Driver.From is { } from ? indexOf(from) : null;
        }

        chain.Reverse();
        return [.. chain];
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
