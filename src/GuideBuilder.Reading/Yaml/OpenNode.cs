namespace GuideBuilder.Reading;

/// <summary>A list or mapping whose end has not come yet.</summary>
internal sealed class OpenNode(bool hasKeys, Place place)
{
    private readonly ImmutableArray<Node>.Builder _items = ImmutableArray.CreateBuilder<Node>();
    private readonly ImmutableArray<Entry>.Builder _entries = ImmutableArray.CreateBuilder<Entry>();
    private readonly Dictionary<string, Place> _keys = new(StringComparer.Ordinal);
    private Scalar? _key;

    /// <summary>Where it begins.</summary>
    public Place Place => place;

    /// <summary>True when the next node is a key.</summary>
    public bool WantsKey => hasKeys && _key is null;

    /// <summary>Puts the next node in its place. A key that was there before is a fault, and its second value is dropped.</summary>
    public void Take(Node node, FaultList faults)
    {
        if (!hasKeys)
        {
            _items.Add(node);
        }
        else if (_key is null)
        {
            _key = (Scalar)node;
        }
        else
        {
            Take(new Entry(_key, node), faults);
            _key = null;
        }
    }

    /// <summary>The finished node.</summary>
    public Node Close() => hasKeys ? new Mapping(_entries.ToImmutable(), place) : new Sequence(_items.ToImmutable(), place);

    private void Take(Entry entry, FaultList faults)
    {
        if (entry.Key is { Form: ScalarForm.Plain, Text: "<<" })
        {
            faults.Add(ReadingFaults.MergeKey(entry.Key.Place));
        }
        else if (_keys.TryAdd(entry.Key.Text, entry.Key.Place))
        {
            _entries.Add(entry);
        }
        else
        {
            faults.Add(ReadingFaults.DuplicateKey(entry.Key.Place, entry.Key.Text, _keys[entry.Key.Text]));
        }
    }
}
