namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// One compiled network of which parts are run: activities that are left out hand on to what they come after, without a wait of their own.
/// A part is dated exactly as if it had been compiled by itself: the order of the whole holds for every part, and the earliest dates do not depend on the order. Safe from several threads.
/// </summary>
internal sealed class SharedNetwork
{
    private readonly CompiledNetwork _whole;
    private readonly int[][] _into;
    private readonly Bound[] _limits;
    private readonly DayTable _everyDay;

    /// <summary>Shares a whole; no activity that is pinned may be left out.</summary>
    public SharedNetwork(CompiledNetwork whole)
    {
        _whole = whole;
        _into = [.. Enumerable.Range(0, whole.Count).Select(i => whole.Incoming[i].ToArray().Where(b => whole.Bounds[b].Kind != BoundKind.Within).ToArray())];
        _limits = [.. whole.Bounds.Where(b => b.Kind == BoundKind.Within)];
        _everyDay = whole.Horizon.Table(WorkingCalendar.EveryDay);
    }

    /// <summary>The part with the activities that are present; numbers stay those of the whole.</summary>
    public CompiledNetwork Of(bool[] present)
    {
        var bounds = new List<Bound>(_whole.Bounds.Length);
        var behind = new Bound[]?[present.Length];
        for (var to = 0; to < present.Length; to++)
        {
            if (present[to])
            {
                AddInto(to, present, behind, bounds);
            }
        }

        foreach (var limit in _limits)
        {
            if (present[limit.From] && present[limit.To])
            {
                bounds.Add(limit);
            }
        }

        return new(_whole, present, [.. bounds]);
    }

    private void AddInto(int to, bool[] present, Bound[]?[] behind, List<Bound> bounds)
    {
        var first = bounds.Count;
        foreach (var b in _into[to])
        {
            ref readonly var bound = ref _whole.Bounds[b];
            if (present[bound.From])
            {
                AddOnce(bound, first, bounds);
                continue;
            }

            foreach (var before in Behind(bound.From, present, behind))
            {
                AddOnce(before with { To = to, SameDay = _whole.Cells.Of[before.From] == _whole.Cells.Of[to] }, first, bounds);
            }
        }
    }

    // What stands behind an activity that is left out, without waits.
    private Bound[] Behind(int absent, bool[] present, Bound[]?[] behind)
    {
        if (behind[absent] is { } found)
        {
            return found;
        }

        behind[absent] = [];
        var all = new List<Bound>();
        foreach (var b in _into[absent])
        {
            ref readonly var bound = ref _whole.Bounds[b];
            if (present[bound.From])
            {
                AddOnce(new(bound.From, absent, bound.Kind, 0, _everyDay, false), 0, all);
                continue;
            }

            foreach (var before in Behind(bound.From, present, behind))
            {
                AddOnce(before with { To = absent }, 0, all);
            }
        }

        return behind[absent] = [.. all];
    }

    private static void AddOnce(in Bound bound, int first, List<Bound> bounds)
    {
        for (var i = first; i < bounds.Count; i++)
        {
            if (bounds[i] == bound)
            {
                return;
            }
        }

        bounds.Add(bound);
    }
}
