namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// The least fixpoint of all lower bounds: every start begins as early as it may and is raised until no bound is broken.
/// No step raises a start above any schedule that keeps all bounds, so each date found is the earliest possible, all at once.
/// </summary>
internal ref struct ForwardPass
{
    /// <summary>Driver of a cell that its release day decides; a driver below it names the member whose not-before day decides.</summary>
    public const int Release = -1;

    private readonly CompiledNetwork _net;
    private readonly ReadOnlySpan<int> _days;
    private readonly Span<int> _starts;
    private readonly Span<int> _finishes;
    private readonly Span<int> _drivers;

    private ForwardPass(CompiledNetwork net, ReadOnlySpan<int> days, Span<int> starts, Span<int> finishes, Span<int> drivers)
    {
        _net = net;
        _days = days;
        _starts = starts;
        _finishes = finishes;
        _drivers = drivers;
    }

    /// <summary>Runs the pass; drivers (one a cell: a bound's index, or Release, or -2 less a member) may be left empty. Gives the cell for which no day was left, or -1.</summary>
    public static int Run(CompiledNetwork net, ReadOnlySpan<int> days, Span<int> starts, Span<int> finishes, Span<int> drivers)
    {
        var pass = new ForwardPass(net, days, starts, finishes, drivers);
        for (var cell = 0; cell < net.Cells.Count; cell++)
        {
            if (!pass.Begin(cell))
            {
                return cell;
            }
        }

        for (var c = 0; c < net.Order.Count; c++)
        {
            var stuck = pass.Settle(net.Order[c], net.Order.Again[c]);
            if (stuck >= 0)
            {
                return stuck;
            }
        }

        return -1;
    }

    private readonly bool Begin(int cell)
    {
        var day = _net.Cells.Fixed[cell];
        Note(cell, _net.Cells.ReleaseDriver[cell]);
        return Place(_net.Cells.Members[cell], day != CompiledNetwork.Free ? day : _net.Cells.Tables[cell].OnOrAfter(_net.Cells.Release[cell]));
    }

    private readonly int Settle(ReadOnlySpan<int> cells, bool again)
    {
        var changed = true;
        for (var first = true; first || (again && changed); first = false)
        {
            changed = false;
            foreach (var cell in cells)
            {
                if (_net.Cells.Fixed[cell] != CompiledNetwork.Free || _net.Cells.Members[cell].Length == 0)
                {
                    continue;
                }

                var before = _starts[_net.Cells.Members[cell][0]];
                if (!Raise(cell))
                {
                    return cell;
                }

                changed |= _starts[_net.Cells.Members[cell][0]] != before;
            }
        }

        return -1;
    }

    /// <summary>Puts a cell on the first day that all its bounds allow and notes the bound that asks most; false when there is no such day.</summary>
    private readonly bool Raise(int cell)
    {
        var members = _net.Cells.Members[cell];
        var (most, driver) = (-1, Release);
        foreach (var member in members)
        {
            foreach (var b in _net.Incoming[member])
            {
                ref readonly var bound = ref _net.Bounds[b];
                var asked = bound.Raise(_starts[bound.From], _finishes[bound.From], _net.Tables[member], _days[member]);

                // What the members of a cell ask of each other decides nothing unless it moves them.
                if (asked > most && (_net.Cells.Of[bound.From] != cell || asked > _starts[member]))
                {
                    (most, driver) = (asked, b);
                }
            }
        }

        if (most < _net.Cells.Release[cell])
        {
            return true;
        }

        Note(cell, driver);
        return most <= _starts[members[0]] || Place(members, _net.Cells.Tables[cell].OnOrAfter(most));
    }

    private readonly bool Place(int[] members, int start)
    {
        foreach (var m in members)
        {
            _starts[m] = start;
            _finishes[m] = _net.FinishFrom(m, start, _days[m]);
            if (_finishes[m] >= DayTable.Never)
            {
                return false;
            }
        }

        return true;
    }

    private readonly void Note(int cell, int driver)
    {
        if (!_drivers.IsEmpty)
        {
            _drivers[cell] = driver;
        }
    }
}
