namespace GuideBuilder.Planning.Sequence;

/// <summary>Puts activities on days: earliest and latest dates, floats, what decides each date, and whether a deadline can be met. Pure; the same network gives the same dates.</summary>
public static class Sequencer
{
    /// <summary>Turns a network into arrays, to be run many times. A horizon may be shared by networks that start on one day.</summary>
    public static CompiledNetwork Compile(Network network, Horizon horizon) => new(network, horizon);

    /// <summary>The earliest dates, nothing that is not done starting before a day.</summary>
    public static Forward Forward(Network network, LocalDate start) => Forward(Compile(network, new(start)));

    /// <summary>The earliest dates of a compiled network.</summary>
    public static Forward Forward(CompiledNetwork net)
    {
        var (starts, finishes, drivers) = (new int[net.Count], new int[net.Count], new int[net.Cells.Count]);
        var stuck = net.Ring is null ? ForwardPass.Run(net, net.Days, starts, finishes, drivers) : -1;
        Timing TimingOf(int i) => Chains.TimingOf(net, i, starts, finishes, drivers);
        ImmutableArray<Timing> ChainTo(int i) => Chains.To(net, i, starts, finishes, drivers);
        var none = new Forward(net, starts, finishes, drivers);
        return net.Ring is not null ? none : stuck >= 0 ? none with { Obstacles = [Obstacles.Stuck(net, stuck, ChainTo)] } : none with
        {
            Timings = [.. Enumerable.Range(0, net.Count).Select(TimingOf)],
            Finish = net.Horizon.Date(LastDay(net, starts, finishes)),
            Obstacles = [.. Obstacles.Broken(net, starts, finishes, TimingOf, ChainTo)],
            Conflicts = [.. Obstacles.Conflicts(net, starts, finishes, ChainTo)],
        };
    }

    /// <summary>The earliest days with other durations, as day numbers of the horizon: starts, and boundaries after the last day (a moment's is its start). Gives the last day used, or null where a trial finds no dates within three years. Checks no finish-by day.</summary>
    public static int? ForwardDays(CompiledNetwork net, ReadOnlySpan<int> durations, Span<int> starts, Span<int> finishes) =>
        ForwardPass.Run(net, durations, starts, finishes, []) < 0 ? LastDay(net, starts, finishes) : null;

    /// <summary>The latest dates with which all finishes by an end, that day included.</summary>
    public static Latest Backward(Network network, Forward forward, LocalDate end) => Backward(forward.Compiled, end);

    /// <summary>How far each activity and group can slip between its earliest and its latest dates.</summary>
    public static Floats Floats(Network network, Forward forward, Latest latest) => Slack.Of(forward, latest);

    /// <summary>Everything at once, against a deadline or the plan's own finish.</summary>
    public static Outcome Solve(Network network, LocalDate start, LocalDate? deadline) => Solve(Compile(network, new(start)), deadline);

    /// <summary>Everything at once for a compiled network.</summary>
    public static Outcome Solve(CompiledNetwork net, LocalDate? deadline)
    {
        var forward = Forward(net);
        if (forward.Finish is not { } finish)
        {
            return new(forward.Ring is null ? Verdict.Impossible : Verdict.Contradictory, forward, null, null, [], deadline, 0, null);
        }

        var latest = Backward(net, deadline ?? finish);
        return new(
            VerdictOf(forward, finish, deadline),
            forward,
            latest,
            Slack.Of(forward, latest),
            DrivingChain(forward),
            deadline,
            deadline is { } day ? Margin(forward, finish, day) : 0,
            forward.IsPossible ? LastSafeStart(net, latest) : null);
    }

    /// <summary>The chain of activities that decides the finish of the whole, first cause first, along what decided each start.</summary>
    public static ImmutableArray<Timing> DrivingChain(Forward forward) =>
        forward.Timings.IsEmpty ? [] : To(forward, LastActivity(forward.Compiled, forward.Starts, forward.Finishes));

    /// <summary>The chain that decides the start of an activity, first cause first, itself last.</summary>
    public static ImmutableArray<Timing> ChainTo(Forward forward, string id) => To(forward, forward.Compiled.IndexOf(id));

    private static ImmutableArray<Timing> To(Forward forward, int activity) => Chains.To(forward.Compiled, activity, forward.Starts, forward.Finishes, forward.Drivers);

    private static Latest Backward(CompiledNetwork net, LocalDate end)
    {
        var (starts, finishes) = (new int[net.Count], new int[net.Count]);
        if (net.Ring is null)
        {
            BackwardPass.Run(net, starts, finishes, net.Horizon.Day(end));
        }

        var spans = Enumerable.Range(0, net.Count)
            .Select(i => new DaySpan(net.Id(i), net.Horizon.Date(starts[i]), net.Horizon.Date(Math.Max(starts[i], finishes[i] - 1))));
        return new(net, end, starts, finishes) { Spans = [.. spans] };
    }

    private static Verdict VerdictOf(Forward forward, LocalDate finish, LocalDate? deadline) =>
        !forward.IsPossible ? Verdict.Impossible : deadline is not { } day ? Verdict.NoDeadline : finish <= day ? Verdict.Met : Verdict.Missed;

    private static int Margin(Forward forward, LocalDate finish, LocalDate deadline)
    {
        var net = forward.Compiled;
        var table = net.Count == 0 ? net.Horizon.Table(WorkingCalendar.EveryDay) : net.Tables[LastActivity(net, forward.Starts, forward.Finishes)];
        return table.Rank(net.Horizon.Day(deadline) + 1) - table.Rank(net.Horizon.Day(finish) + 1);
    }

    private static LocalDate? LastSafeStart(CompiledNetwork net, Latest latest)
    {
        var free = Enumerable.Range(0, net.Count).Where(i => net.Cells.Fixed[net.Cells.Of[i]] == CompiledNetwork.Free).Select(i => latest.Starts[i]).ToArray();
        return free.Length == 0 ? null : net.Horizon.Date(free.Min());
    }

    internal static int LastDay(CompiledNetwork net, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes)
    {
        var last = net.Count == 0 ? net.Horizon.StartDay : 0;
        for (var i = 0; i < net.Count; i++)
        {
            last = Math.Max(last, Math.Max(starts[i], finishes[i] - 1));
        }

        return last;
    }

    /// <summary>The activity that is last to finish; of several, the one furthest along the links.</summary>
    internal static int LastActivity(CompiledNetwork net, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes)
    {
        var last = -1;
        foreach (var i in net.Sequence)
        {
            last = last < 0 || (finishes[i], starts[i]).CompareTo((finishes[last], starts[last])) >= 0 ? i : last;
        }

        return last;
    }
}
