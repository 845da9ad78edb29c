namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// Finds a ring of bounds that asks a date to lie after itself. Each bound is measured by how many open days of one calendar it moves a date on at the least,
/// over every day of the horizon; if a ring adds up to more than nothing in any calendar, no dates can meet it.
/// </summary>
internal sealed class Waits
{
    private readonly CompiledNetwork _net;
    private readonly DayTable _measure;
    private readonly List<Arc> _arcs = [];

    private Waits(CompiledNetwork net, DayTable measure, int[] bounds, int[] members)
    {
        _net = net;
        _measure = measure;
        foreach (var m in members)
        {
            var (start, finish) = (net.Cells.Of[m], net.Cells.Count + m);
            Add(start, finish, -1, m, (s, e) => (s, e));
            Add(finish, start, -1, m, (s, e) => (e, Snap(m, net.Tables[m].EarliestEndingAt(e, net.Days[m]))));
        }

        foreach (var b in bounds)
        {
            AddBound(b, net.Bounds[b]);
        }
    }

    /// <summary>The bounds of a ring that no dates can meet among the cells of a component, in order, or null.</summary>
    public static List<int>? Gaining(CompiledNetwork net, ReadOnlySpan<int> cells)
    {
        var inside = cells.ToArray().ToHashSet();
        var members = inside.Order().SelectMany(c => net.Cells.Members[c]).ToArray();
        var bounds = members.SelectMany(m => net.Incoming[m].ToArray()).Where(b => inside.Contains(net.Cells.Of[net.Bounds[b].From])).Order().ToArray();
        var measures = bounds.Select(b => net.Bounds[b].Table).Concat(members.Select(m => net.Tables[m])).Distinct();
        return measures.Select(m => new Waits(net, m, bounds, members).Ring(inside.Count + members.Length)).FirstOrDefault(r => r is not null);
    }

    private void AddBound(int index, Bound bound)
    {
        var (from, to) = (_net.Cells.Of[bound.From], _net.Cells.Of[bound.To]);
        if (bound.Kind == BoundKind.Within)
        {
            Add(from, _net.Cells.Count + bound.To, index, bound.From, (s, _) => (s, bound.Table.EarliestWithin(s, bound.Lag)));
            return;
        }

        var start = bound.Kind == BoundKind.StartToStart;
        Add(start ? from : _net.Cells.Count + bound.From, to, index, bound.From, (s, e) => (start ? s : e, Snap(bound.To, bound.Raise(s, e, _net.Tables[bound.To], 0))));
    }

    private int Snap(int activity, int day) => day >= DayTable.Never ? DayTable.Never : _net.Cells.Tables[_net.Cells.Of[activity]].OnOrAfter(day);

    /// <summary>Adds an arc whose gain is the least over every start and finish that its activity can have.</summary>
    private void Add(int from, int to, int bound, int activity, Func<int, int, (int Before, int After)> step)
    {
        var table = _net.Cells.Tables[_net.Cells.Of[activity]];
        var least = DayTable.Never;
        for (var day = table.OnOrAfter(_net.Horizon.StartDay); day < DayTable.Never; day = table.OnOrAfter(day + 1))
        {
            var (before, after) = step(day, _net.FinishFrom(activity, day, _net.Days[activity]));
            if (before < DayTable.Never && after < DayTable.Never)
            {
                least = Math.Min(least, _measure.Rank(after) - _measure.Rank(before));
            }
        }

        if (least < DayTable.Never)
        {
            _arcs.Add(new(from, to, least, bound));
        }
    }

    /// <summary>Bellman and Ford's search for the longest way; what still grows after as many rounds as there are dates goes round.</summary>
    private List<int>? Ring(int dates)
    {
        var (longest, into, last) = (new Dictionary<int, int>(), new Dictionary<int, Arc>(), -1);
        for (var round = 0; round <= dates; round++)
        {
            last = -1;
            foreach (var arc in _arcs.Where(a => longest.GetValueOrDefault(a.From) + a.Gain > longest.GetValueOrDefault(a.To)))
            {
                (longest[arc.To], into[arc.To], last) = (longest.GetValueOrDefault(arc.From) + arc.Gain, arc, arc.To);
            }

            if (last < 0)
            {
                return null;
            }
        }

        for (var i = 0; i < dates; i++)
        {
            last = into[last].From;
        }

        var ring = new List<int>();
        var at = last;
        do
        {
            ring.Add(into[at].Bound);
            at = into[at].From;
        }
        while (at != last);
        ring.Reverse();
        return [.. ring.Where(b => b >= 0)];
    }

    private readonly record struct Arc(int From, int To, int Gain, int Bound);
}
