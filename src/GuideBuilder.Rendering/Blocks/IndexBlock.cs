using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The index at the back: terms, and the pages on which they occur.</summary>
internal static class IndexBlock
{
    // A term that stands on more pages than this leads to chapters only.
    private const int MostPages = 8;

    /// <summary>Terms by the alphabet, each with its pages in reading order; a term that occurs nowhere is left out.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var pages = bindery.Written.Select(p => (Page: p, Words: PlainText.Of(p))).ToList();
        var lines = bindery.Guidance.Terms
            .OrderBy(t => t.Word.Words, StringComparer.OrdinalIgnoreCase).ThenBy(t => t.Id, StringComparer.Ordinal)
            .Select(t => (Term: t, Pages: pages.Where(p => Occurs(t, p.Words)).Select(p => p.Page).ToList()))
            .Where(l => l.Pages.Count > 0)
            .Select(l => l with { Pages = l.Pages.Count > MostPages ? [.. l.Pages.Where(p => p.Kind is PageKind.Cover or PageKind.Chapter)] : l.Pages })
            .Select(l => new Definition(null, Bindery.Link(l.Term.Id, bindery.Words(l.Term.Word)), [new Block.Prose(Pages(l.Pages))]));
        ImmutableArray<Definition> all = [.. lines];
        return all.IsEmpty ? [] : [new Block.Definitions(all)];
    }

    private static Phrase Pages(IEnumerable<Page> pages) =>
        Phrase.Join("; ", pages.Select(p => Bindery.Link(p.Id, Phrase.Of(p.Number.Length == 0 ? p.Title.PlainWords : $"{p.Number} {p.Title.PlainWords}"))));

    private static bool Occurs(Term term, string words) => term.Also.Prepend(term.Word).Any(w => Occurs(w.Words, words));

    // A whole word, in any case, also with a plural s.
    private static bool Occurs(string term, string words)
    {
        for (var at = words.IndexOf(term, StringComparison.OrdinalIgnoreCase); at >= 0; at = words.IndexOf(term, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + term.Length;
            end += end < words.Length && words[end] == 's' ? 1 : 0;
            if ((at == 0 || !char.IsLetterOrDigit(words[at - 1])) && (end >= words.Length || !char.IsLetterOrDigit(words[end])))
            {
                return true;
            }
        }

        return false;
    }
}
