namespace GuideBuilder.Rendering.Pages;

/// <summary>One page as the contents list it: id, kind, number in reading order (empty for the cover) and title.</summary>
internal sealed record OutlineLine(string Id, PageKind Kind, string Number, Phrase Title)
{
    /// <summary>The language of the page's own text.</summary>
    internal string Language { get; init; } = LocalText.Original;

    /// <summary>Whether a new part of the editions for paper begins with it.</summary>
    internal bool BeginsPart { get; init; }
}

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
                lines.AddRange(Items(kind, plan, guidance).Where(i => !leftOut.Contains(i.Id)).Select(i => new OutlineLine(i.Id, kind, Invariant($"{chapter}.{++leaf}"), Titled(guidance, i.Title)) { Language = i.Language }));
                continue;
            }

            var page = guidance.Pages.First(p => p.Id == line.Page);
            PageTitle.Of(page, faults);
            var isCover = line.Page == BookOrder.Cover;
            (chapter, leaf) = (isCover ? chapter : chapter + 1, 0);
            lines.Add(new(line.Page!, isCover ? PageKind.Cover : PageKind.Chapter, isCover ? "" : Invariant($"{chapter}"), Titled(guidance, PageTitle.Said(page))) { Language = page.Text.Language, BeginsPart = line.BeginsPart });
        }

        return lines.ToImmutable();
    }

    /// <summary>The pages that are bound beside the book.</summary>
    internal static ImmutableArray<OutlineLine> Apart(ImmutableArray<ChapterLine> chapters, Guidance guidance, FaultList faults) =>
        [.. chapters.Where(c => c.IsApart).Select(c => guidance.Pages.First(p => p.Id == c.Page)).Select(p => Beside(p, guidance, faults))];

    private static OutlineLine Beside(Template page, Guidance guidance, FaultList faults)
    {
        PageTitle.Of(page, faults);
        return new(page.Id, PageKind.Chapter, "", Titled(guidance, PageTitle.Said(page))) { Language = page.Text.Language };
    }

    private static IEnumerable<(string Id, LocalText Title, string Language)> Items(PageKind kind, Plan plan, Guidance guidance) => kind switch
    {
        PageKind.Party => plan.Parties.Where(p => p.IsPresent).Select(p => Named(p.Item)),
        PageKind.Way => plan.Ways.Where(w => w.Way.IsPresent).Select(w => Named(w.Way.Item)),
        PageKind.Step => TurnOrder.Of(plan.Steps.Where(s => s.Step.IsPresent), byDay: false).Select(s => Named(s.Step.Item)),
        PageKind.Hazard => plan.Hazards.Where(h => h.Hazard.IsPresent).Select(h => Named(h.Hazard.Item)),
        PageKind.Letter => guidance.Letters.Select(l => (l.Id, PageTitle.Said(l), l.Text.Language)),
        _ => throw new UnreachableException(),
    };

    // An item's own page is in the language of its reasons: a title can be translated alone.
    private static (string Id, LocalText Title, string Language) Named(Rule rule) => (rule.Id, rule.Title, rule.Head.Because.Language);

    // In a book of two languages every title says in which it is.
    private static Phrase Titled(Guidance guidance, LocalText title) =>
        guidance.Language.IsOriginal ? Phrase.Of(title.Words) : Phrase.Of(new Inline.InLanguage(title.Language, Phrase.Of(title.Words)));
}
