namespace GuideBuilder.Rendering.Pages;

/// <summary>One page as the contents list it: id, kind, number in reading order (empty for the cover) and title.</summary>
internal sealed record OutlineLine(string Id, PageKind Kind, string Number, Phrase Title);

/// <summary>Which pages this plan's book has, in reading order.</summary>
internal static class Outline
{
    /// <summary>The lines of the book: chapters as listed, after each the home pages that belong there; items that are ruled out and letters that are left out have none.</summary>
    internal static ImmutableArray<OutlineLine> Of(ImmutableArray<ChapterLine> chapters, Plan plan, Guidance guidance, FrozenSet<string> leftOut, FaultList faults)
    {
        var lines = ImmutableArray.CreateBuilder<OutlineLine>();
        var (chapter, leaf) = (0, 0);
        foreach (var line in chapters.Where(c => !c.IsApart))
        {
            if (line.PagesOf is { } kind)
            {
                lines.AddRange(Items(kind, plan, guidance).Where(i => !leftOut.Contains(i.Id)).Select(i => new OutlineLine(i.Id, kind, Invariant($"{chapter}.{++leaf}"), i.Title)));
                continue;
            }

            var title = PageTitle.Of(guidance.Pages.First(p => p.Id == line.Page), faults);
            var isCover = line.Page == BookOrder.Cover;
            (chapter, leaf) = (isCover ? chapter : chapter + 1, 0);
            lines.Add(new(line.Page!, isCover ? PageKind.Cover : PageKind.Chapter, isCover ? "" : Invariant($"{chapter}"), Phrase.Of(title)));
        }

        return lines.ToImmutable();
    }

    /// <summary>The pages that are bound beside the book.</summary>
    internal static ImmutableArray<OutlineLine> Apart(ImmutableArray<ChapterLine> chapters, Guidance guidance, FaultList faults) =>
        [.. chapters.Where(c => c.IsApart).Select(c => new OutlineLine(c.Page!, PageKind.Chapter, "", Phrase.Of(PageTitle.Of(guidance.Pages.First(p => p.Id == c.Page), faults))))];

    private static IEnumerable<(string Id, Phrase Title)> Items(PageKind kind, Plan plan, Guidance guidance) => kind switch
    {
        PageKind.Party => plan.Parties.Where(p => p.IsPresent).Select(p => Named(p.Item)),
        PageKind.Way => plan.Ways.Where(w => w.Way.IsPresent).Select(w => Named(w.Way.Item)),
        PageKind.Step => plan.Steps.Where(s => s.Step.IsPresent).Select(s => Named(s.Step.Item)),
        PageKind.Hazard => plan.Hazards.Where(h => h.Hazard.IsPresent).Select(h => Named(h.Hazard.Item)),
        PageKind.Letter => guidance.Letters.Select(l => (l.Id, Phrase.Of(PageTitle.Of(l)))),
        _ => throw new UnreachableException(),
    };

    private static (string Id, Phrase Title) Named(Rule rule) => (rule.Id, Phrase.Of(rule.Title.Words));
}
