namespace GuideBuilder.Reading;

/// <summary>Every id and every name of the guidance, known before any entry is read, so that entries can name one another in any order.</summary>
internal sealed class Registry
{
    private readonly Dictionary<string, Dictionary<string, Place>> _byKind = new(StringComparer.Ordinal);

    /// <summary>Takes what conditions may ask about; complete unless a file could not be read at all.</summary>
    public Registry(IEnumerable<Named> names, bool isComplete)
    {
        Names = names.DistinctBy(n => n.Name).ToFrozenDictionary(n => n.Name, StringComparer.Ordinal);
        IsComplete = isComplete;
    }

    /// <summary>Everything that a condition may ask about, by name.</summary>
    public FrozenDictionary<string, Named> Names { get; }

    /// <summary>False when a file could not be read, so that a missing name may be no mistake.</summary>
    public bool IsComplete { get; }

    /// <summary>Keeps an id of a kind; returns where it stood before, or null when it is new.</summary>
    public Place? Add(string kind, string id, Place place)
    {
        var ids = Of(kind);
        return ids.TryAdd(id, place) ? null : ids[id];
    }

    /// <summary>Whether any of the kinds has this id.</summary>
    public bool Has(string id, params ReadOnlySpan<string> kinds)
    {
        foreach (var kind in kinds)
        {
            if (Of(kind).ContainsKey(id))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Every id of a kind.</summary>
    public IEnumerable<string> Ids(string kind) => Of(kind).Keys;

    private Dictionary<string, Place> Of(string kind)
    {
        if (!_byKind.TryGetValue(kind, out var ids))
        {
            _byKind[kind] = ids = new(StringComparer.Ordinal);
        }

        return ids;
    }
}
