namespace GuideBuilder.Reading;

/// <summary>Makes of a tree and its comments an answers file as it is written. A comment on a line of its own belongs to the key or item below it, another to the first key or item of its line; above the first key and after the last it belongs to the file.</summary>
internal sealed class WrittenReader
{
    private readonly Dictionary<object, List<string>> _notes = new(ReferenceEqualityComparer.Instance);
    private readonly List<string> _atTop = [];
    private readonly List<string> _atEnd = [];

    private WrittenReader(Node root, ImmutableArray<Comment> comments)
    {
        var stops = Stops(root).ToList();
        foreach (var comment in comments)
        {
            (comment.Line < stops[0].Line ? _atTop : NotesOf(Holder(stops, comment))).Add(comment.Words);
        }
    }

    /// <summary>The file of which this is the tree.</summary>
    public static WrittenAnswers Read(Node root, ImmutableArray<Comment> comments)
    {
        var reader = new WrittenReader(root, comments);
        return new([.. reader._atTop], reader.Entries((Mapping)root), [.. reader._atEnd]);
    }

    // What a comment can belong to, in written order: a key or an item of a list, with its line.
    private static IEnumerable<(object Stop, int Line)> Stops(Node node) => node switch
    {
        Mapping mapping => mapping.Entries.SelectMany(e => Stops(e.Value).Prepend((e, e.Key.Place.Line))),
        Sequence list => list.Items.SelectMany(i => Stops(i).Prepend((i, i.Place.Line))),
        _ => [],
    };

    private static object? Holder(List<(object Stop, int Line)> stops, Comment comment)
    {
        if (comment.Alone || stops.FindLastIndex(s => s.Line <= comment.Line) is var last && last < 0)
        {
            return stops.Find(s => s.Line > comment.Line).Stop;
        }

        return stops.Find(s => s.Line == stops[last].Line).Stop;
    }

    private List<string> NotesOf(object? stop)
    {
        if (stop is null)
        {
            return _atEnd;
        }

        if (!_notes.TryGetValue(stop, out var notes))
        {
            _notes[stop] = notes = [];
        }

        return notes;
    }

    private ImmutableArray<string> Take(object stop) => _notes.TryGetValue(stop, out var notes) ? [.. notes] : [];

    private ImmutableArray<WrittenEntry> Entries(Mapping mapping) => [.. mapping.Entries.Select(e => new WrittenEntry(e.Key.Text, Value(e.Value), Take(e)))];

    private Written Value(Node node) => node switch
    {
        Mapping mapping => new Written.Keys(Entries(mapping)),
        Sequence list => new Written.List([.. list.Items.Select(i => new WrittenItem(Value(i), Take(i)))]),
        Scalar { Form: ScalarForm.Block } block => new Written.One(block.Text.TrimEnd('\n'), Quoted: true),
        Scalar scalar => new Written.One(scalar.Text, scalar.Form == ScalarForm.Quoted),
        _ => throw new UnreachableException(),
    };
}
