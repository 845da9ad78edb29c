namespace GuideBuilder.Rendering.Pages;

/// <summary>What an edition leaves of the book: its own list of chapters, look/chapters-(edition).txt, or the whole list where it has none.</summary>
internal static class EditionPages
{
    private const string Own = "chapters-";

    /// <summary>The guidance with the pages of this edition, and its chapters.</summary>
    internal static (Guidance Guidance, ImmutableArray<ChapterLine> Chapters) Of(Plan plan, Guidance guidance, FaultList faults)
    {
        var lists = guidance.Look.Files;
        var others = lists.Keys.Where(n => n.StartsWith(Own, StringComparison.Ordinal)).Order(StringComparer.Ordinal).SelectMany(n => BookOrder.Named(lists[n])).ToFrozenSet(StringComparer.Ordinal);
        if (plan.Occasion.Edition == EditionKind.Householder || !lists.TryGetValue(NameOf(plan.Occasion.Edition), out var list))
        {
            var whole = lists[BookOrder.FileName];
            return (guidance, BookOrder.Read(whole, guidance.Pages, faults, others.Except(BookOrder.Named(whole)).ToFrozenSet(StringComparer.Ordinal)));
        }

        var told = guidance with { Pages = Pages(guidance, list, faults), Letters = Letters(guidance, list, faults) };
        return (told, BookOrder.Read(list, told.Pages, faults));
    }

    /// <summary>The plan as the edition tells it: the public one tells no odds, and nothing of what has happened or is late.</summary>
    internal static Plan Told(Plan plan) => plan.Occasion.Edition == EditionKind.Public ? plan with { Chances = null, Whereabouts = Whereabouts.None } : plan;

    private static string NameOf(EditionKind edition) => $"{Own}{edition.ToString().ToLowerInvariant()}.txt";

    private static ImmutableArray<Template> Pages(Guidance guidance, LocalText list, FaultList faults)
    {
        var named = BookOrder.Named(list).ToHashSet(StringComparer.Ordinal);
        var first = BookOrder.FirstPage(list);
        if (first is not null && guidance.Pages.All(p => p.Id != first))
        {
            faults.Add(RenderingFaults.ChapterMissing(list.Place, first));
        }

        return [.. guidance.Pages.Where(p => named.Contains(p.Id)).Select(p => p.Id == first ? p with { Id = BookOrder.Cover } : p)];
    }

    // An edition that names letters has no others.
    private static ImmutableArray<Template> Letters(Guidance guidance, LocalText list, FaultList faults)
    {
        var named = BookOrder.Letters(list).ToList();
        foreach (var id in named.Where(n => guidance.Letters.All(l => l.Id != n)))
        {
            faults.Add(RenderingFaults.ChapterMissing(list.Place, id));
        }

        return named.Count == 0 ? guidance.Letters : [.. guidance.Letters.Where(l => named.Contains(l.Id))];
    }
}
