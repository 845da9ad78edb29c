namespace GuideBuilder.Planning.Sequence;

/// <summary>The cells in an order in which each comes after all that bound it; cells that bound each other stand together as one component.</summary>
internal sealed class Components
{
    private readonly int[] _cells;
    private readonly int[] _starts;

    private Components(int[] cells, int[] starts, bool[] again) => (_cells, _starts, Again) = (cells, starts, again);

    /// <summary>How many there are.</summary>
    public int Count => _starts.Length - 1;

    /// <summary>Whether a component's cells bound each other, or one itself, so that it must be gone through until nothing changes.</summary>
    public bool[] Again { get; }

    /// <summary>The cells of a component.</summary>
    public ReadOnlySpan<int> this[int component] => _cells.AsSpan(_starts[component].._starts[component + 1]);

    /// <summary>Finds the components (Kosaraju's two searches) and orders the cells of each by its precedences, as far as those go one way.</summary>
    public static Components Order(CompiledNetwork compiled)
    {
        var cells = compiled.Cells;
        var arrows = compiled.Bounds.Select(b => (From: cells.Of[b.From], To: cells.Of[b.To], b.Kind)).Where(a => cells.Fixed[a.To] == CompiledNetwork.Free).ToArray();
        var ahead = new Arrows(cells.Count, arrows, a => a.From, a => a.To);
        var back = new Arrows(cells.Count, arrows, a => a.To, a => a.From);
        var plain = new Arrows(cells.Count, [.. arrows.Where(a => a.Kind != BoundKind.Within)], a => a.From, a => a.To);
        var rank = new int[cells.Count];
        foreach (var (cell, place) in plain.Reversed(Enumerable.Range(0, cells.Count).Reverse()).Select((c, i) => (c, i)))
        {
            rank[cell] = place;
        }

        var component = back.Roots(ahead.Reversed(Enumerable.Range(0, cells.Count).Reverse()));
        var order = Enumerable.Range(0, cells.Count).OrderBy(c => component[c]).ThenBy(c => rank[c]).ToArray();
        var count = cells.Count == 0 ? 0 : component.Max() + 1;
        var starts = new int[count + 1];
        foreach (var c in component)
        {
            starts[c + 1]++;
        }

        var again = starts.Skip(1).Select(n => n > 1).ToArray();
        for (var c = 0; c < count; c++)
        {
            starts[c + 1] += starts[c];
        }

        foreach (var a in arrows.Where(a => a.From == a.To))
        {
            again[component[a.From]] = true;
        }

        return new(order, starts, again);
    }
}
