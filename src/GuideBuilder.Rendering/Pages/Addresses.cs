namespace GuideBuilder.Rendering.Pages;

/// <summary>Where an item is at home: a page, and the place on it (null for the page itself).</summary>
internal sealed record Home(string Page, string? Fragment);

/// <summary>The one table from items to their homes, made once from the pages themselves.</summary>
internal sealed class Addresses
{
    /// <summary>What an anchor of <em>how this was worked out</em> begins with.</summary>
    internal const string ReasonPrefix = "reason-";

    private readonly FrozenDictionary<string, Home> _homes;
    private readonly FrozenSet<string> _leftOut;
    private readonly bool _isPart;

    private Addresses(FrozenDictionary<string, Home> homes, FrozenSet<string> leftOut, bool isPart) => (_homes, _leftOut, _isPart) = (homes, leftOut, isPart);

    /// <summary>The table of these pages; a page's own id wins over an anchor, an earlier anchor over a later one. A page that uses an anchor twice is a fault. A part of the book may link to what it leaves out.</summary>
    internal static Addresses Of(IReadOnlyList<Page> pages, FrozenSet<string> leftOut, bool isPart, FaultList faults)
    {
        var homes = pages.ToDictionary(p => p.Id, p => new Home(p.Id, null), StringComparer.Ordinal);
        foreach (var page in pages)
        {
            var here = new HashSet<string>(StringComparer.Ordinal);
            foreach (var anchor in page.Blocks.SelectMany(Anchors.Of))
            {
                if (!here.Add(anchor))
                {
                    faults.Add(RenderingFaults.AnchorTwice(Place.None, page.Id, anchor));
                }

                homes.TryAdd(anchor, new Home(page.Id, anchor));
            }
        }

        return new(homes.ToFrozenDictionary(StringComparer.Ordinal), leftOut, isPart);
    }

    /// <summary>Whether a target is left out on purpose: a letter with nothing to say, or anything in an edition that is a part of the whole book.</summary>
    internal bool IsLeftOut(Target target) => _isPart || target is Target.Item item && _leftOut.Contains(item.Id);

    /// <summary>The home of what a target names; an item without one leads to the entry that says why it is left out; null when that is missing too.</summary>
    internal Home? Find(Target target) => target switch
    {
        Target.Item item => _homes.GetValueOrDefault(item.Id) ?? _homes.GetValueOrDefault(ReasonPrefix + item.Id),
        Target.Reason reason => _homes.GetValueOrDefault(ReasonPrefix + reason.Id),
        _ => throw new UnreachableException(),
    };
}
