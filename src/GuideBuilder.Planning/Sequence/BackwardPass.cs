namespace GuideBuilder.Planning.Sequence;

/// <summary>The greatest fixpoint of all upper bounds: every start begins as late as the end allows and is lowered until no bound is broken. What is done is neither moved nor passed through; what is given is not moved.</summary>
internal readonly ref struct BackwardPass
{
    private readonly CompiledNetwork _net;
    private readonly Span<int> _starts;
    private readonly Span<int> _finishes;
    private readonly int _end;

    private BackwardPass(CompiledNetwork net, Span<int> starts, Span<int> finishes, int end)
    {
        _net = net;
        _starts = starts;
        _finishes = finishes;
        _end = end;
    }

    /// <summary>Runs the pass against the last day on which anything may finish. A date before the horizon is given as its first day.</summary>
    public static void Run(CompiledNetwork net, Span<int> starts, Span<int> finishes, int end)
    {
        var pass = new BackwardPass(net, starts, finishes, end);
        for (var cell = 0; cell < net.Cells.Count; cell++)
        {
            var day = net.Cells.Fixed[cell];
            pass.Place(cell, day != CompiledNetwork.Free ? day : end);
        }

        for (var c = net.Order.Count - 1; c >= 0; c--)
        {
            pass.Settle(net.Order[c], net.Order.Again[c]);
        }
    }

    private void Settle(ReadOnlySpan<int> cells, bool again)
    {
        var changed = true;
        for (var first = true; first || (again && changed); first = false)
        {
            changed = false;
            for (var i = cells.Length - 1; i >= 0; i--)
            {
                changed |= _net.Cells.Fixed[cells[i]] == CompiledNetwork.Free && Lower(cells[i]);
            }
        }
    }

    private bool Lower(int cell)
    {
        var members = _net.Cells.Members[cell];
        var most = _starts[members[0]];
        foreach (var m in members)
        {
            most = Math.Min(most, CapOf(_net, m, _starts, _finishes, _end));
        }

        most = Math.Max(0, _net.Cells.Tables[cell].OnOrBefore(most));
        if (most >= _starts[members[0]])
        {
            return false;
        }

        Place(cell, most);
        return true;
    }

    /// <summary>The latest start that the end and an activity's followers, standing where the arrays say, leave it; its group and its calendar's closed days aside.</summary>
    public static int CapOf(CompiledNetwork net, int activity, ReadOnlySpan<int> starts, ReadOnlySpan<int> finishes, int end)
    {
        var days = net.Days[activity];
        var table = net.Tables[activity];
        var cap = table.Before(Math.Min(days > 0 ? end + 1 : end, net.FinishBy[activity]), days);
        foreach (var b in net.Outgoing[activity])
        {
            ref readonly var bound = ref net.Bounds[b];
            if (bound.Kind == BoundKind.Within || !net.IsDone[bound.To])
            {
                cap = Math.Min(cap, bound.Cap(starts[bound.To], finishes[bound.To], table, days));
            }
        }

        return cap;
    }

    private void Place(int cell, int start)
    {
        foreach (var m in _net.Cells.Members[cell])
        {
            _starts[m] = start;
            _finishes[m] = _net.FinishFrom(m, start, _net.Days[m]);
        }
    }
}
