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
        var (cells, bounds) = (compiled.Cells, compiled.Bounds);

        // What the log holds fast is bound by nothing.
        bool Binds(Bound b) => cells.Fixed[cells.Of[b.To]] == CompiledNetwork.Free;
        int From(Bound b) => cells.Of[b.From];
        int To(Bound b) => cells.Of[b.To];
        var left = new Arrows(cells.Count, bounds, b => Binds(b) ? From(b) : -1, To).Reversed();
        var component = new Arrows(cells.Count, bounds, b => Binds(b) ? To(b) : -1, From).Roots(left);

        // Without longest waits the order of the precedences is that of all arrows.
        var ranked = Array.Exists(bounds, b => b.Kind == BoundKind.Within)
            ? new Arrows(cells.Count, bounds, b => Binds(b) && b.Kind != BoundKind.Within ? From(b) : -1, To).Reversed()
            : left;
        var (order, starts) = Divided(ranked, component);
        var again = new bool[starts.Length - 1];
        for (var c = 0; c < again.Length; c++)
        {
            again[c] = starts[c + 1] - starts[c] > 1;
        }

        foreach (var b in bounds.Where(b => From(b) == To(b) && Binds(b)))
        {
            again[component[From(b)]] = true;
        }

        return new(order, starts, again);
    }

    // The cells component by component, each in the order given, and where each component begins.
    private static (int[] Cells, int[] Starts) Divided(int[] ranked, int[] component)
    {
        var starts = new int[(component.Length == 0 ? 0 : component.Max() + 1) + 1];
        foreach (var c in component)
        {
            starts[c + 1]++;
        }

        for (var c = 1; c < starts.Length; c++)
        {
            starts[c] += starts[c - 1];
        }

        var (next, order) = (starts.AsSpan().ToArray(), new int[ranked.Length]);
        foreach (var cell in ranked)
        {
            order[next[component[cell]]++] = cell;
        }

        return (order, starts);
    }
}
