namespace GuideBuilder.Planning.Sequence;

/// <summary>Arrows between numbered places, searched in depth without recursion, so that a chain may be as long as it likes.</summary>
internal sealed class Arrows
{
    private readonly int _count;
    private readonly Rows _rows;
    private readonly int[] _heads;

    /// <summary>An arrow for each bound from its tail to its head; a negative tail leaves it out.</summary>
    public Arrows(int count, Bound[] bounds, Func<Bound, int> tail, Func<Bound, int> head)
    {
        _count = count;
        _rows = Rows.Of(count, bounds, tail);
        _heads = Array.ConvertAll(bounds, b => head(b));
    }

    /// <summary>All places, each before those that its arrows lead to as far as no circle forbids: the order of leaving them in depth-first search from the last place to the first, reversed.</summary>
    public int[] Reversed()
    {
        var left = new int[_count];
        var (free, seen, path) = (_count, new bool[_count], new Stack<(int Place, int Next)>());
        for (var root = _count - 1; root >= 0; root--)
        {
            Search(root, seen, path, place => left[--free] = place);
        }

        return left;
    }

    /// <summary>Numbers every place by the search that reached it, searches starting in the order given.</summary>
    public int[] Roots(IEnumerable<int> from)
    {
        var number = new int[_count];
        var (next, seen, path) = (0, new bool[_count], new Stack<(int Place, int Next)>());
        foreach (var root in from.Where(r => !seen[r]))
        {
            Search(root, seen, path, place => number[place] = next);
            next++;
        }

        return number;
    }

    private void Search(int root, bool[] seen, Stack<(int Place, int Next)> path, Action<int> leave)
    {
        if (seen[root])
        {
            return;
        }

        path.Push((root, 0));
        seen[root] = true;
        while (path.TryPop(out var at))
        {
            var row = _rows[at.Place];
            if (at.Next == row.Length)
            {
                leave(at.Place);
                continue;
            }

            path.Push((at.Place, at.Next + 1));
            var head = _heads[row[at.Next]];
            if (!seen[head])
            {
                seen[head] = true;
                path.Push((head, 0));
            }
        }
    }
}
