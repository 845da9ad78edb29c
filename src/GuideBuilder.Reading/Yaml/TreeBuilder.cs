namespace GuideBuilder.Reading;

/// <summary>Builds the node tree while a file is read from top to bottom, within a budget. It knows no YAML library.</summary>
internal sealed class TreeBuilder(Budget budget, FaultList faults)
{
    private readonly Stack<OpenNode> _open = new();
    private int _nodes;

    /// <summary>The whole tree, once the outermost node is closed.</summary>
    public Node? Root { get; private set; }

    /// <summary>True when reading on is of no use: the budget is spent or a key is not one value.</summary>
    public bool Stopped { get; private set; }

    /// <summary>Where the innermost list or mapping that is still open begins, or null.</summary>
    public Place? InnermostOpen => _open.TryPeek(out var innermost) ? innermost.Place : null;

    /// <summary>A list (or, with keys, a mapping) begins.</summary>
    public void Open(bool hasKeys, Place place)
    {
        if (_open.TryPeek(out var parent) && parent.WantsKey)
        {
            Stop(ReadingFaults.ComplexKey(place));
        }
        else if (_open.Count >= budget.Depth)
        {
            Stop(ReadingFaults.TooDeep(place, budget.Depth));
        }
        else if (Counted(place))
        {
            _open.Push(new(hasKeys, place));
        }
    }

    /// <summary>The innermost list or mapping ends.</summary>
    public void Close() => Place(_open.Pop().Close());

    /// <summary>One value stands here.</summary>
    public void Add(Scalar scalar)
    {
        if (Counted(scalar.Place))
        {
            Place(scalar);
        }
    }

    private bool Counted(Place place)
    {
        if (++_nodes > budget.Nodes)
        {
            Stop(ReadingFaults.TooManyNodes(place, budget.Nodes));
        }

        return !Stopped;
    }

    private void Stop(Fault fault)
    {
        faults.Add(fault);
        Stopped = true;
    }

    private void Place(Node node)
    {
        if (_open.TryPeek(out var parent))
        {
            parent.Take(node, faults);
        }
        else
        {
            Root = node;
        }
    }
}
