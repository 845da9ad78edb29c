namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// Dates parts of a network, one after another in the same arrays. A part is dated exactly as if it had been compiled by itself:
/// the order of the whole holds for every part, and the earliest dates do not depend on the order. For one thread.
/// </summary>
internal sealed class PartPass
{
    private readonly Handed[] _handed;
    private readonly CellPart[] _cells;
    private PartNetwork _parts;
    private CompiledNetwork _net;
    private int[] _cellOf;
    private DayTable[] _tables;
    private Bound[][] _into;
    private bool[] _present = [];
    private int[] _days = [];
    private bool _limits = true;

    /// <summary>Room for parts of networks with as many activities and no more cells.</summary>
    public PartPass(PartNetwork parts)
    {
        (_parts, _net, _cellOf, _tables, _into) = (parts, parts.Whole, parts.Whole.Cells.Of, parts.Whole.Tables, parts.Into);
        (Starts, Finishes, Drivers) = (new int[_net.Count], new int[_net.Count], new int[_net.Count]);
        (_handed, _cells) = (new Handed[_net.Count], new CellPart[_net.Count]);
    }

    /// <summary>The starts found.</summary>
    public int[] Starts { get; }

    /// <summary>The boundaries at which they end.</summary>
    public int[] Finishes { get; }

    /// <summary>By cell the activity that decides its start, or Release, or -2 less the member whose not-before day decides.</summary>
    public int[] Drivers { get; }

    /// <summary>The activity that decides the start of an activity; below nothing for none.</summary>
    public int DriverOf(int activity) => Drivers[_cellOf[activity]];

    /// <summary>The network of which parts are dated.</summary>
    public CompiledNetwork Net => _net;

    /// <summary>The cell as far as it is present.</summary>
    public ref readonly CellPart Cell(int cell) => ref _cells[cell];

    /// <summary>Goes over to a part: the activities that are present. The array must stay as it is.</summary>
    public void Take(PartNetwork parts, bool[] present)
    {
        (_parts, _net, _present) = (parts, parts.Whole, present);
        (_cellOf, _tables, _into) = (_net.Cells.Of, _net.Tables, parts.Into);
        for (var cell = 0; cell < _net.Cells.Count; cell++)
        {
            _cells[cell] = parts.Cell(cell, present);
        }
    }

    /// <summary>The forward pass with these durations; false when no day is left for something. Where limits may give way, those that leave no day are not asked for.</summary>
    public bool Run(int[] days, bool mayYield = true)
    {
        (_days, _limits) = (days, true);
        var settled = true;
        for (var cell = 0; cell < _net.Cells.Count && settled; cell++)
        {
            settled = Begin(cell);
        }

        for (var c = 0; c < _net.Order.Count && settled; c++)
        {
            settled = Settle(_net.Order[c], _net.Order.Again[c]) || (mayYield && SettleWithoutLimits(_net.Order[c], _net.Order.Again[c]));
        }

        return settled;
    }

    // Limits that contradict a wait stand in one component with it.
    private bool SettleWithoutLimits(ReadOnlySpan<int> cells, bool again)
    {
        _limits = false;
        foreach (var cell in cells)
        {
            Begin(cell);
        }

        var settled = Settle(cells, again);
        _limits = true;
        return settled;
    }

    private bool Begin(int cell)
    {
        ref readonly var part = ref _cells[cell];
        if (part.Members.Length == 0)
        {
            return true;
        }

        var day = _net.Cells.Fixed[cell];
        Drivers[cell] = part.Driver;
        return Place(part.Members, day != CompiledNetwork.Free ? day : part.Table.OnOrAfter(part.Release));
    }

    private bool Settle(ReadOnlySpan<int> cells, bool again)
    {
        var changed = true;
        for (var first = true; first || (again && changed); first = false)
        {
            changed = false;
            foreach (var cell in cells)
            {
                var before = StartOf(cell);
                if (!Settle(cell))
                {
                    return false;
                }

                changed |= StartOf(cell) != before;
            }
        }

        return true;
    }

    private bool Settle(int cell)
    {
        HandOn(cell);
        if (_cells[cell].Members.Length == 0 || _net.Cells.Fixed[cell] != CompiledNetwork.Free)
        {
            return true;
        }

        var settled = Raise(cell);
        HandOn(cell);
        return settled;
    }

    private int StartOf(int cell) => _cells[cell].Members is [var first, ..] ? Starts[first] : -1;

    /// <summary>Works out what the members of a cell that are left out hand on.</summary>
    public void HandOn(int cell)
    {
        if (_cells[cell].Members.Length == _net.Cells.Members[cell].Length)
        {
            return;
        }

        foreach (var absent in _parts.AlongLinks[cell])
        {
            if (_present[absent])
            {
                continue;
            }

            var handed = Handed.Nothing;
            foreach (ref readonly var bound in _into[absent].AsSpan())
            {
                if (_present[bound.From])
                {
                    handed.Offer(bound.Kind == BoundKind.StartToStart ? Starts[bound.From] : Finishes[bound.From], _cellOf[bound.From], bound.From);
                }
                else
                {
                    handed.Offer(_handed[bound.From]);
                }
            }

            _handed[absent] = handed;
        }
    }

    // Puts a cell on the first day that all its bounds allow; false when there is no such day.
    private bool Raise(int cell)
    {
        ref readonly var part = ref _cells[cell];
        var (most, driver) = (-1, ForwardPass.Release);
        foreach (var member in part.Members)
        {
            AskLinks(cell, member, true, ref most, ref driver);
            foreach (ref readonly var limit in _parts.Limits[member].AsSpan())
            {
                if (_limits && _present[limit.From])
                {
                    Ask(cell, member, limit, ref most, ref driver);
                }
            }
        }

        if (most < part.Release)
        {
            return true;
        }

        Drivers[cell] = driver;
        return most <= Starts[part.Members[0]] || Place(part.Members, part.Table.OnOrAfter(most));
    }

    /// <summary>The latest start that the links into a member ask for, and the activity that asks; those within its cell only where they count.</summary>
    public void AskLinks(int cell, int member, bool within, ref int most, ref int driver)
    {
        foreach (ref readonly var bound in _into[member].AsSpan())
        {
            if (_present[bound.From])
            {
                if (within || _cellOf[bound.From] != cell)
                {
                    Ask(cell, member, bound, ref most, ref driver);
                }

                continue;
            }

            ref readonly var handed = ref _handed[bound.From];
            if (handed.TopCell != cell)
            {
                Take(handed.Top, handed.TopFrom, ref most, ref driver);
                continue;
            }

            // Within a cell what follows may share the last day.
            Take(within && handed.Top - 1 > Starts[member] ? handed.Top - 1 : -1, handed.TopFrom, ref most, ref driver);
            Take(handed.Next, handed.NextFrom, ref most, ref driver);
        }
    }

    // What the members of a cell ask of each other decides nothing unless it moves them.
    private void Ask(int cell, int member, in Bound bound, ref int most, ref int driver)
    {
        var asked = bound.Raise(Starts[bound.From], Finishes[bound.From], _tables[member], _days[member]);
        if (_cellOf[bound.From] != cell || asked > Starts[member])
        {
            Take(asked, bound.From, ref most, ref driver);
        }
    }

    private static void Take(int asked, int from, ref int most, ref int driver) => (most, driver) = asked > most ? (asked, from) : (most, driver);

    private bool Place(int[] members, int start)
    {
        foreach (var m in members)
        {
            Starts[m] = start;
            Finishes[m] = _net.FinishFrom(m, start, _days[m]);
            if (Finishes[m] >= DayTable.Never)
            {
                return false;
            }
        }

        return true;
    }
}
