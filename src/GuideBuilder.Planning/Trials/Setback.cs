using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Trials;

/// <summary>A chance event of one trial: the step in which it happens, and by how many open days of which calendar it puts it back.</summary>
internal readonly record struct Mishap(int Step, int Days, DayTable Table);

/// <summary>
/// What chance events do to the dates of a trial. What was planned before them has been done on its day, so only what follows moves, and a limit that the plan kept (a hole open too long) asks for nothing to be done again.
/// A step of a meeting puts off the whole meeting; any other step finishes later.
/// </summary>
internal readonly ref struct Setback
{
    private readonly PartPass _pass;
    private readonly CompiledNetwork _net;
    private readonly ReadOnlySpan<Mishap> _mishaps;
    private readonly ReadOnlySpan<int> _days;

    private Setback(PartPass pass, ReadOnlySpan<Mishap> mishaps, ReadOnlySpan<int> days)
    {
        (_pass, _net) = (pass, pass.Net);
        _mishaps = mishaps;
        _days = days;
    }

    /// <summary>Moves the dates of a pass that was run with these durations, and its drivers with them; false when there is no day left for something.</summary>
    public static bool Apply(PartPass pass, ReadOnlySpan<Mishap> mishaps, ReadOnlySpan<int> days)
    {
        var setback = new Setback(pass, mishaps, days);
        for (var c = 0; c < pass.Net.Order.Count; c++)
        {
            if (!setback.Settle(pass.Net.Order[c], pass.Net.Order.Again[c]))
            {
                return false;
            }
        }

        return true;
    }

    private bool Settle(ReadOnlySpan<int> cells, bool again)
    {
        var changed = true;
        for (var first = true; first || (again && changed); first = false)
        {
            changed = false;
            foreach (var cell in cells)
            {
                _pass.HandOn(cell);
                if (!Move(cell, first, ref changed))
                {
                    return false;
                }

                _pass.HandOn(cell);
            }
        }

        return true;
    }

    private bool Move(int cell, bool first, ref bool changed)
    {
        var members = _pass.Cell(cell).Members;
        if (members.Length == 0 || _net.IsDone[members[0]])
        {
            return true;
        }

        var before = _pass.Starts[members[0]];
        var asked = Math.Max(before, _net.Cells.Fixed[cell] == CompiledNetwork.Free ? Asked(cell, members, before) : 0);
        asked = first && IsMeeting(members[0]) ? PutOff(members, asked) : asked;
        if (asked == before && !first)
        {
            return true;
        }

        return Place(members, asked == before ? before : _pass.Cell(cell).Table.OnOrAfter(asked), ref changed);
    }

    // The first day that all links of a cell ask for, limits aside.
    private int Asked(int cell, int[] members, int before)
    {
        var (most, driver) = (-1, ForwardPass.Release);
        foreach (var member in members)
        {
            _pass.AskLinks(cell, member, false, ref most, ref driver);
        }

        if (most > before)
        {
            (_pass.Drivers[cell], _pass.Leads[cell]) = (driver, driver);
        }

        return most;
    }

    private int PutOff(int[] members, int start)
    {
        foreach (ref readonly var mishap in _mishaps)
        {
            start = Array.IndexOf(members, mishap.Step) >= 0 ? mishap.Table.After(start, mishap.Days) : start;
        }

        return start;
    }

    private bool Place(int[] members, int start, ref bool changed)
    {
        foreach (var m in members)
        {
            var finish = Later(m, _net.FinishFrom(m, start, _days[m]));
            changed |= start != _pass.Starts[m] || finish != _pass.Finishes[m];
            (_pass.Starts[m], _pass.Finishes[m]) = (start, finish);
            if (finish >= DayTable.Never)
            {
                return false;
            }
        }

        return true;
    }

    private int Later(int member, int finish)
    {
        foreach (ref readonly var mishap in _mishaps)
        {
            finish = mishap.Step == member && !IsMeeting(member) ? mishap.Table.After(finish, mishap.Days) : finish;
        }

        return finish;
    }

    private bool IsMeeting(int member) => _net.Network.Activities[member].Group is not null;
}
