namespace GuideBuilder.Planning.Sequence;

/// <summary>
/// Dates parts of a network, one after another in the same arrays. A part is dated exactly as if it had been compiled by itself:
/// the order of the whole holds for every part, and the earliest dates do not depend on the order. For one thread.
/// </summary>
internal sealed partial class PartPass
{
    private readonly Handed[] _handed;
    private readonly CellPart[] _cells;
    private PartNetwork _parts;
    private CompiledNetwork _net;
    private bool[] _present = [];
    private int[] _days = [];
    private bool _limits = true;

    /// <summary>Room for parts of networks with as many activities and no more cells.</summary>
    public PartPass(PartNetwork parts)
    {
        (_parts, _net) = (parts, parts.Whole);
        (Starts, Finishes, Drivers, Leads) = (new int[_net.Count], new int[_net.Count], new int[_net.Count], new int[_net.Count]);
        (_handed, _cells) = (new Handed[_net.Count], new CellPart[_net.Count]);
    }

    /// <summary>The starts found.</summary>
    public int[] Starts { get; }

    /// <summary>The boundaries at which they end.</summary>
    public int[] Finishes { get; }

    /// <summary>By cell the activity that decides its start, or Release, or -2 less the member whose not-before day decides.</summary>
    public int[] Drivers { get; }

    /// <summary>By cell what decides its start by what waits for what alone: a step that a limit draws along decides nothing.</summary>
    public int[] Leads { get; }

    /// <summary>The activity that decides the start of an activity by what waits for what alone; below nothing for none.</summary>
    public int LeadOf(int activity) => Leads[_net.Cells.Of[activity]];

    /// <summary>The activity that decides the start of an activity; below nothing for none.</summary>
    public int DriverOf(int activity) => Drivers[_net.Cells.Of[activity]];

    /// <summary>The network of which parts are dated.</summary>
    public CompiledNetwork Net => _net;

    /// <summary>The cell as far as it is present.</summary>
    public ref readonly CellPart Cell(int cell) => ref _cells[cell];

    /// <summary>Goes over to a part: the activities that are present. The array must stay as it is.</summary>
    public void Take(PartNetwork parts, bool[] present)
    {
        (_parts, _net, _present) = (parts, parts.Whole, present);
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
            var cells = _net.Order[c];
            var again = _net.Order.Again[c];
            settled = Lead(cells, again) && (!again || Settle(cells, again));
            settled = settled || (mayYield && SettleWithoutLimits(cells, again));
        }

        return settled;
    }

    // First as if there were no limits: what comes out is no later than with them, and who leads is told by it.
    private bool Lead(ReadOnlySpan<int> cells, bool again)
    {
        _limits = !again;
        var settled = Settle(cells, again);
        _limits = true;
        foreach (var cell in cells)
        {
            Leads[cell] = Drivers[cell];
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
