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
        var pages = bindery.Written.Select(p => (Page: p, Words: new Searched(PlainText.Of(p)))).ToList();
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

    private static bool Occurs(Term term, Searched words) => term.Also.Prepend(term.Word).Any(w => words.Holds(w.Words.ToUpperInvariant()));

    // A page's words, in capitals as well: looking for exact characters is many times quicker than for either case.
    private sealed class Searched(string words)
    {
        private readonly string _capitals = words.ToUpperInvariant();

        // A whole word, in any case, also with a plural s.
        public bool Holds(string capitals)
        {
            for (var at = _capitals.IndexOf(capitals, StringComparison.Ordinal); at >= 0; at = _capitals.IndexOf(capitals, at + 1, StringComparison.Ordinal))
            {
                var end = at + capitals.Length;
                end += end < words.Length && words[end] == 's' ? 1 : 0;
                if ((at == 0 || !char.IsLetterOrDigit(words[at - 1])) && (end >= words.Length || !char.IsLetterOrDigit(words[end])))
                {
                    return true;
                }
            }

            return false;
        }
    }
}
