namespace GuideBuilder.Planning.Sequence;

/// <summary>What the links of a part ask for, through activities that are left out as well.</summary>
internal sealed partial class PartPass
{
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
            foreach (ref readonly var bound in _parts.Into[absent].AsSpan())
            {
                if (_present[bound.From])
                {
                    handed.Offer(bound.Kind == BoundKind.StartToStart ? Starts[bound.From] : Finishes[bound.From], _net.Cells.Of[bound.From], bound.From);
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
        foreach (ref readonly var bound in _parts.Into[member].AsSpan())
        {
            if (_present[bound.From])
            {
                if (within || _net.Cells.Of[bound.From] != cell)
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
        var asked = bound.Raise(Starts[bound.From], Finishes[bound.From], _net.Tables[member], _days[member]);
        if (_net.Cells.Of[bound.From] != cell || asked > Starts[member])
        {
            Take(asked, bound.From, ref most, ref driver);
        }
    }

    private static void Take(int asked, int from, ref int most, ref int driver) => (most, driver) = asked > most ? (asked, from) : (most, driver);
}
