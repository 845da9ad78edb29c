namespace GuideBuilder.Reading;

/// <summary>The keys of one mapping while they are read. Each key that the reader asks for becomes a known one; <see cref="Close"/> makes a fault of every other.</summary>
internal sealed class Fields
{
    private readonly Mapping? _mapping;
    private readonly FaultList _faults;
    private readonly List<string> _known = [];

    /// <summary>Begins to read a node, which should be a mapping; of what, as a fault names it (a step, an option …).</summary>
    public Fields(Node node, string what, FaultList faults)
    {
        Place = node.Place;
        What = what;
        _faults = faults;
        _mapping = node as Mapping;
        if (_mapping is null)
        {
            faults.Add(node is Scalar { IsEmpty: true } ? ReadingFaults.EmptyValue(node.Place) : ReadingFaults.NotAMapping(node.Place, what));
        }
    }

    /// <summary>Where the mapping begins.</summary>
    public Place Place { get; }

    /// <summary>What the mapping describes.</summary>
    public string What { get; }

    /// <summary>Whether the key was written; it becomes a known one.</summary>
    public bool Has(string key) => Node(key) is not null;

    /// <summary>The node under a key, without making it a known one.</summary>
    public Node? Peek(string key) => _mapping?[key];

    /// <summary>The node under a key, which becomes a known one; null when it was left out.</summary>
    public Node? Node(string key)
    {
        _known.Add(key);
        return _mapping?[key];
    }

    /// <summary>The value under a key that must be there.</summary>
    public T Need<T>(string key, Read<T> read, T standIn)
    {
        if (Node(key) is { } node)
        {
            return read(node, _faults);
        }

        if (_mapping is not null)
        {
            _faults.Add(ReadingFaults.MissingKey(Place, What, key));
        }

        return standIn;
    }

    /// <summary>The value under a key that may be left out.</summary>
    public T Find<T>(string key, Read<T> read, T otherwise) => Node(key) is { } node ? read(node, _faults) : otherwise;

    /// <summary>Words that must be there.</summary>
    public LocalText NeedText(string key) => Need(key, Values.Text, LocalText.Empty);

    /// <summary>Words that may be left out.</summary>
    public LocalText FindText(string key) => Find(key, Values.Text, LocalText.Empty);

    /// <summary>A date that may be left out.</summary>
    public LocalDate? FindDate(string key) => Node(key) is { } node ? Values.Date(node, _faults) : null;

    /// <summary>One line that may be left out.</summary>
    public string? FindLine(string key) => Node(key) is { } node ? Values.Line(node, _faults) : null;

    /// <summary>Ends the reading: every key that nobody asked for is a fault.</summary>
    public void Close()
    {
        foreach (var entry in (_mapping?.Entries ?? []).Where(e => !_known.Contains(e.Key.Text, StringComparer.Ordinal)))
        {
            _faults.Add(DividedByComma(entry) ?? ReadingFaults.UnknownKey(entry.Key.Place, What, entry.Key.Text, _known.Distinct(StringComparer.Ordinal)));
        }
    }

    /// <summary>The fault of a key that is really the end of words or of a sum cut at a comma between braces; null when it is not.</summary>
    public static Fault? DividedByComma(Entry entry) =>
        entry is { Key.Form: ScalarForm.Plain, Value: Scalar { Text: "", Form: ScalarForm.Plain } } && !entry.Key.Text.All(c => c is '-' or (>= 'a' and <= 'z'))
            ? ReadingFaults.CommaDivides(entry.Key.Place, entry.Key.Text)
            : null;
}
