namespace GuideBuilder.Planning.Sequence;

/// <summary>Finds links that contradict each other whatever the dates: precedences that go round, or a wait that is longer than the most that is allowed.</summary>
internal static class Rings
{
    /// <summary>The first ring found, or null.</summary>
    public static Ring? Find(CompiledNetwork net)
    {
        var round = Round(net);
        for (var c = 0; round is null && c < net.Order.Count; c++)
        {
            round = net.Order.Again[c] ? Waits.Gaining(net, net.Order[c]) : null;
        }

        return round is null ? null : new([.. round.Select(b => net.Bounds[b]).Select(b => new RingLink(net.Id(b.From), net.Id(b.To), b.Kind == BoundKind.Within))]);
    }

    /// <summary>Precedences that lead from an activity back to itself, whatever they last; pinned activities break no circle.</summary>
    private static List<int>? Round(CompiledNetwork net)
    {
        var waiting = new int[net.Count];
        foreach (var b in net.Bounds.Where(b => b.Kind != BoundKind.Within))
        {
            waiting[b.To]++;
        }

        var free = new Queue<int>(Enumerable.Range(0, net.Count).Where(i => waiting[i] == 0));
        while (free.TryDequeue(out var i))
        {
            foreach (var b in net.Outgoing[i])
            {
                if (net.Bounds[b].Kind != BoundKind.Within && --waiting[net.Bounds[b].To] == 0)
                {
                    free.Enqueue(net.Bounds[b].To);
                }
            }
        }

        var on = Array.FindIndex(waiting, n => n > 0);
        return on < 0 ? null : WalkBack(net, on, i => Incoming(net, i).First(b => net.Bounds[b].Kind != BoundKind.Within && waiting[net.Bounds[b].From] > 0));
    }

    private static int[] Incoming(CompiledNetwork net, int activity) => net.Incoming[activity].ToArray();

    private static List<int> WalkBack(CompiledNetwork net, int on, Func<int, int> boundInto)
    {
        var seen = new Dictionary<int, int>();
        var walked = new List<int>();
        while (seen.TryAdd(on, walked.Count))
        {
            walked.Add(boundInto(on));
            on = net.Bounds[walked[^1]].From;
        }

        walked.RemoveRange(0, seen[on]);
        walked.Reverse();
        return walked;
    }
}
