namespace GuideBuilder.Reading;

/// <summary>A piece of a file as it was written: nothing in it has been converted.</summary>
internal abstract record Node(Place Place);

/// <summary>One value: its text, how it was written, and where.</summary>
internal sealed record Scalar(string Text, ScalarForm Form, Place Place) : Node(Place)
{
    /// <summary>The language of the words; another than the original only where a translation laid them over.</summary>
    public string Language { get; init; } = LocalText.Original;

    /// <summary>Whether nothing was written where a value could stand.</summary>
    public bool IsEmpty => Text.Length == 0 || (Form == ScalarForm.Plain && Text is "~" or "null");

    /// <summary>Whether the word stands here, whatever the quotes.</summary>
    public bool Is(string word) => string.Equals(Text, word, StringComparison.Ordinal);
}

/// <summary>A list, in written order.</summary>
internal sealed record Sequence(ImmutableArray<Node> Items, Place Place) : Node(Place);

/// <summary>Keys and values, in written order, each key once.</summary>
internal sealed record Mapping(ImmutableArray<Entry> Entries, Place Place) : Node(Place)
{
    /// <summary>The value under a key, or null.</summary>
    public Node? this[string key] => Entries.FirstOrDefault(e => e.Key.Is(key))?.Value;
}

/// <summary>One key of a mapping with its value.</summary>
internal sealed record Entry(Scalar Key, Node Value);

/// <summary>How a value was written.</summary>
internal enum ScalarForm
{
    /// <summary>Without quotes.</summary>
    Plain,

    /// <summary>In single or double quotes.</summary>
    Quoted,

    /// <summary>As a block after | or &gt;.</summary>
    Block,
}
