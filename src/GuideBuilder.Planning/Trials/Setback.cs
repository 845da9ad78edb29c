using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Trials;

/// <summary>A chance event of one trial: the step in which it happens, and by how many open days of which calendar it puts it back.</summary>
internal readonly record struct Mishap(int Step, int Days, DayTable Table);

/// <summary>
/// What chance events do to the dates of a trial. What was planned before them has been done on its day, so only what follows moves, and a limit that the plan kept (a hole open too long) asks for nothing to be done again.
/// A step of a meeting puts off the whole meeting; any other step finishes later.
/// </summary>
internal ref struct Setback
{
    private readonly CompiledNetwork _net;
    private readonly ReadOnlySpan<Mishap> _mishaps;
    private readonly int[] _days;
    private readonly int[] _starts;
    private readonly int[] _finishes;
    private readonly int[] _drivers;

    private Setback(CompiledNetwork net, ReadOnlySpan<Mishap> mishaps, int[] days, int[] starts, int[] finishes, int[] drivers)
    {
        _mishaps = mishaps;
        (_net, _days) = (net, days);
        (_starts, _finishes, _drivers) = (starts, finishes, drivers);
    }

    /// <summary>Moves the dates of a forward pass, and its drivers with them; false when there is no day left for something.</summary>
    public static bool Apply(CompiledNetwork net, ReadOnlySpan<Mishap> mishaps, int[] days, int[] starts, int[] finishes, int[] drivers)
    {
        var setback = new Setback(net, mishaps, days, starts, finishes, drivers);
        for (var c = 0; c < net.Order.Count; c++)
        {
            if (!setback.Settle(net.Order[c], net.Order.Again[c]))
            {
                return false;
            }
        }

        return true;
    }

    private readonly bool Settle(ReadOnlySpan<int> cells, bool again)
    {
        var changed = true;
        for (var first = true; first || (again && changed); first = false)
        {
            changed = false;
            foreach (var cell in cells)
            {
                var members = _net.Cells.Members[cell];
                if (members.Length == 0 || _net.IsDone[members[0]])
                {
                    continue;
                }

                var start = Math.Max(_starts[members[0]], _net.Cells.Fixed[cell] == CompiledNetwork.Free ? Asked(cell, members) : 0);
                start = first && IsMeeting(members[0]) ? PutOff(members, start) : start;
                if ((start > _starts[members[0]] || first) && !Place(cell, members, start, ref changed))
                {
                    return false;
                }
            }
        }

        return true;
    }

    // The first day that all links of a cell ask for, limits aside.
    private readonly int Asked(int cell, int[] members)
    {
        var most = 0;
        foreach (var member in members)
        {
            foreach (var b in _net.Incoming[member])
            {
                ref readonly var bound = ref _net.Bounds[b];
                if (bound.Kind == BoundKind.Within || _net.Cells.Of[bound.From] == cell)
                {
                    continue;
                }

                var asked = bound.Raise(_starts[bound.From], _finishes[bound.From], _net.Tables[member], _days[member]);
                if (asked > most)
                {
                    most = asked;
                    _drivers[cell] = asked > _starts[members[0]] ? b : _drivers[cell];
                }
            }
        }

        return most;
    }

    private readonly int PutOff(int[] members, int start)
    {
        foreach (ref readonly var mishap in _mishaps)
        {
            start = Array.IndexOf(members, mishap.Step) >= 0 ? mishap.Table.After(start, mishap.Days) : start;
        }

        return start;
    }

    private readonly bool Place(int cell, int[] members, int start, ref bool changed)
    {
        var day = start > _starts[members[0]] ? _net.Cells.Tables[cell].OnOrAfter(start) : start;
        foreach (var m in members)
        {
            var finish = Later(m, _net.FinishFrom(m, day, _days[m]));
            changed |= day != _starts[m] || finish != _finishes[m];
            (_starts[m], _finishes[m]) = (day, finish);
            if (finish >= DayTable.Never)
            {
                return false;
            }
        }

        return true;
    }

    private readonly int Later(int member, int finish)
    {
        if (IsMeeting(member))
        {
            return finish;
        }

        foreach (ref readonly var mishap in _mishaps)
        {
            finish = mishap.Step == member ? mishap.Table.After(finish, mishap.Days) : finish;
        }

        return finish;
    }

    private readonly bool IsMeeting(int member) => _net.Network.Activities[member].Group is not null;
}
