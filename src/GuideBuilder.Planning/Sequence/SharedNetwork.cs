using System.Runtime.InteropServices;

namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// One compiled network of which parts are run: activities that are left out hand on to what they come after, without a wait of their own.
/// A part is dated exactly as if it had been compiled by itself: the order of the whole holds for every part, and the earliest dates do not depend on the order. Safe from several threads.
/// </summary>
internal sealed class SharedNetwork
{
    private readonly CompiledNetwork _whole;
    private readonly Bound[][] _into;
    private readonly Bound[][] _limits;
    private readonly DayTable _everyDay;

    /// <summary>Shares a whole; no activity that is pinned may be left out.</summary>
    public SharedNetwork(CompiledNetwork whole)
    {
        Bound[] Into(int to, bool limits) => [.. whole.Incoming[to].ToArray().Select(b => whole.Bounds[b]).Where(b => (b.Kind == BoundKind.Within) == limits)];
        _whole = whole;
        _into = [.. Enumerable.Range(0, whole.Count).Select(i => Into(i, false))];
        _limits = [.. Enumerable.Range(0, whole.Count).Select(i => Into(i, true))];
        _everyDay = whole.Horizon.Table(WorkingCalendar.EveryDay);
    }

    /// <summary>The part with the activities that are present; numbers stay those of the whole.</summary>
    public CompiledNetwork Of(bool[] present)
    {
        var bounds = new List<Bound>(_whole.Bounds.Length * 2);
        var behind = new Bound[]?[present.Length];
        var starts = new int[present.Length + 1];
        for (var to = 0; to < present.Length; to++)
        {
            if (present[to])
            {
                Add(to, present, behind, bounds);
            }

            starts[to + 1] = bounds.Count;
        }

        return new(_whole, present, [.. bounds], Rows.InOrder(starts));
    }

    private void Add(int to, bool[] present, Bound[]?[] behind, List<Bound> bounds)
    {
        var (first, cell) = (bounds.Count, _whole.Cells.Of[to]);
        foreach (ref readonly var bound in _into[to].AsSpan())
        {
            if (present[bound.From])
            {
                bounds.Add(bound);
                continue;
            }

            foreach (ref readonly var before in Behind(bound.From, present, behind).AsSpan())
            {
                HandOn(before, to, _whole.Cells.Of[before.From] == cell, first, bounds);
            }
        }

        foreach (ref readonly var limit in _limits[to].AsSpan())
        {
            if (present[limit.From])
            {
                bounds.Add(limit);
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
        foreach (ref readonly var bound in _into[absent].AsSpan())
        {
            if (present[bound.From])
            {
                HandOn(bound, absent, false, 0, all);
                continue;
            }

            foreach (ref readonly var before in Behind(bound.From, present, behind).AsSpan())
            {
                HandOn(before, absent, false, 0, all);
            }
        }

        return behind[absent] = [.. all];
    }

    // Handed on once from each activity and end.
    private void HandOn(in Bound bound, int to, bool sameDay, int first, List<Bound> bounds)
    {
        foreach (ref readonly var seen in CollectionsMarshal.AsSpan(bounds)[first..])
        {
            if (seen.From == bound.From && seen.Kind == bound.Kind && seen.Lag == 0 && seen.SameDay == sameDay && ReferenceEquals(seen.Table, _everyDay))
            {
                return;
            }
        }

        bounds.Add(new(bound.From, to, bound.Kind, 0, _everyDay, sameDay));
    }
}
