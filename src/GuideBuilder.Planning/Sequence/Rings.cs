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
            round = net.Order.Again[c] ? TooLong(net, net.Order[c]) : null;
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

    /// <summary>
    /// A ring of bounds that asks a start to lie after itself. Each bound is measured by how many open days of one calendar it moves a start on at the least,
    /// over every day of the horizon; if a ring adds up to more than nothing in any calendar, no dates can meet it.
    /// </summary>
    private static List<int>? TooLong(CompiledNetwork net, ReadOnlySpan<int> cells)
    {
        var inside = cells.ToArray().ToHashSet();
        var bounds = Enumerable.Range(0, net.Bounds.Length)
            .Where(b => inside.Contains(net.Cells.Of[net.Bounds[b].From]) && inside.Contains(net.Cells.Of[net.Bounds[b].To]))
            .ToArray();
        var measures = bounds.Select(b => net.Bounds[b].Table)
            .Concat(cells.ToArray().SelectMany(c => net.Cells.Members[c]).Select(m => net.Tables[m]))
            .Distinct();
        return measures.Select(m => Gaining(net, bounds, [.. bounds.Select(b => Least(net, net.Bounds[b], m))], inside.Count)).FirstOrDefault(r => r is not null);
    }

    private static List<int>? Gaining(CompiledNetwork net, int[] bounds, int[] gains, int cells)
    {
        var longest = new Dictionary<int, int>();
        var into = new Dictionary<int, int>();
        var last = -1;
        for (var round = 0; round <= cells; round++)
        {
            last = -1;
            for (var i = 0; i < bounds.Length; i++)
            {
                var (from, to) = (net.Cells.Of[net.Bounds[bounds[i]].From], net.Cells.Of[net.Bounds[bounds[i]].To]);
                if (gains[i] < DayTable.Never && longest.GetValueOrDefault(from) + gains[i] > longest.GetValueOrDefault(to))
                {
                    longest[to] = longest.GetValueOrDefault(from) + gains[i];
                    into[to] = bounds[i];
                    last = to;
                }
            }

            if (last < 0)
            {
                return null;
            }
        }

        return RingOf(net, into, last, cells);
    }

    private static List<int> RingOf(CompiledNetwork net, Dictionary<int, int> into, int cell, int cells)
    {
        for (var i = 0; i < cells; i++)
        {
            cell = net.Cells.Of[net.Bounds[into[cell]].From];
        }

        var ring = new List<int>();
        var on = cell;
        do
        {
            ring.Add(into[on]);
            on = net.Cells.Of[net.Bounds[into[on]].From];
        }
        while (on != cell);
        ring.Reverse();
        return ring;
    }

    private static int Least(CompiledNetwork net, Bound bound, DayTable measure)
    {
        var least = DayTable.Never;
        var (from, to) = (net.Cells.Tables[net.Cells.Of[bound.From]], net.Cells.Tables[net.Cells.Of[bound.To]]);
        for (var day = from.OnOrAfter(net.Horizon.StartDay); day < DayTable.Never; day = from.OnOrAfter(day + 1))
        {
            var asked = bound.Raise(day, net.Tables[bound.From].After(day, net.Days[bound.From]), net.Tables[bound.To], net.Days[bound.To]);
            var reached = asked >= DayTable.Never ? DayTable.Never : to.OnOrAfter(asked);
            least = reached >= DayTable.Never ? least : Math.Min(least, measure.Rank(reached) - measure.Rank(day));
        }

        return least;
    }
}
