namespace GuideBuilder.Planning.Sequence;

/// <summary>Arrows between numbered places, searched in depth without recursion, so that a chain may be as long as it likes.</summary>
internal sealed class Arrows
{
    private readonly int _count;
    private readonly Rows _rows;
    private readonly int[] _heads;

    public Arrows(int count, (int From, int To, BoundKind Kind)[] arrows, Func<(int From, int To, BoundKind Kind), int> tail, Func<(int From, int To, BoundKind Kind), int> head)
    {
        _count = count;
        _rows = Rows.Of(count, arrows, tail);
        _heads = [.. arrows.Select(head)];
    }

    /// <summary>All places, each before those that its arrows lead to as far as no circle forbids: the order of leaving them in depth-first search, reversed.</summary>
    public int[] Reversed(IEnumerable<int> from)
    {
        var left = new List<int>(_count);
        var seen = new bool[_count];
        foreach (var root in from)
        {
            Search(root, seen, left.Add);
        }

        left.Reverse();
        return [.. left];
    }

    /// <summary>Numbers every place by the search that reached it, searches starting in the order given.</summary>
    public int[] Roots(IEnumerable<int> from)
    {
        var number = new int[_count];
        var seen = new bool[_count];
        var next = 0;
        foreach (var root in from.Where(r => !seen[r]))
        {
            Search(root, seen, place => number[place] = next);
            next++;
        }

        return number;
    }

    private void Search(int root, bool[] seen, Action<int> leave)
    {
        if (seen[root])
        {
            return;
        }

        var path = new Stack<(int Place, int Next)>();
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
