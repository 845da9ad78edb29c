namespace GuideBuilder.Rendering.Pages;

/// <summary>The whole book in reading order as a page for each part that the list of chapters names, or more where the size asks for it: the same pages, written one level down.</summary>
internal sealed class PaperEdition
{
    // A file of more characters than this is divided between chapters; what is left of a megabyte is for the frame and for letters of two bytes.
    private const int MostCharacters = 900_000;

    private readonly string _id;
    private readonly string _title;
    private readonly IReadOnlyList<Page> _pages;
    private readonly Addresses _addresses;
    private readonly Bindery _bindery;

    private PaperEdition(string id, string title, IReadOnlyList<Page> pages, Addresses addresses, Bindery bindery) =>
        (_id, _title, _pages, _addresses, _bindery) = (id, title, pages, addresses, bindery);

    /// <summary>The files of an edition, by id: its kind is the id, its title the label of that id. Pages apart stay files of their own.</summary>
    internal static IEnumerable<(string Name, string Text)> Of(string id, IReadOnlyList<Page> pages, Frame frame, Addresses addresses, Bindery bindery)
    {
        var edition = new PaperEdition(id, bindery.Say($"{id}-title"), pages, addresses, bindery);
        var parts = edition.Divide();
        for (var i = 0; i < parts.Count; i++)
        {
            var body = string.Concat(parts[i].Select(p => edition.Write(p, page => edition.FileOf(parts, page), bindery.Faults)));
            var links = parts.Count == 1 ? "" : edition.OtherParts(parts, i);
            yield return (NameOf(id, i), frame.Around(edition.Whole(i, parts.Count), id, links + body, null));
        }
    }

    private Page Whole(int part, int parts) =>
        new(Invariant($"{_id}{(part == 0 ? "" : $"-{part + 1}")}"), PageKind.Chapter, "", Phrase.Of(TitleOf(parts, part)), []) { Language = _bindery.Language };

    private static string NameOf(string id, int part) => part == 0 ? $"{id}.html" : Invariant($"{id}-{part + 1}.html");

    private string TitleOf(int parts, int part) => parts == 1 ? _title : _bindery.Say("paper-part", ("title", _title), ("n", Figures.Plain(part + 1)), ("all", Figures.Plain(parts)));

    // Weighed first as one file; what is found wrong is reported once, by the writing that counts.
    private List<List<Page>> Divide()
    {
        var (parts, length) = (new List<List<Page>> { new() }, 0);
        foreach (var chapter in Chapters())
        {
            var weight = chapter.Sum(p => Write(p, _ => NameOf(_id, 0), new FaultList()).Length);
            var begins = _bindery.Outline.Any(l => l.BeginsPart && l.Id == chapter[0].Id);
            if ((begins || length + weight > MostCharacters) && parts[^1].Count > 0)
            {
                parts.Add([]);
                length = 0;
            }

            parts[^1].AddRange(chapter);
            length += weight;
        }

        return parts;
    }

    private IEnumerable<List<Page>> Chapters()
    {
        var chapter = new List<Page>();
        foreach (var page in _pages)
        {
            if (page.Kind is PageKind.Chapter && chapter.Count > 0)
            {
                yield return chapter;
                chapter = [];
            }

            chapter.Add(page);
        }

        yield return chapter;
    }

    private string? FileOf(List<List<Page>> parts, string page) => parts.FindIndex(p => p.Any(q => q.Id == page)) is >= 0 and var part ? NameOf(_id, part) : null;

    private string OtherParts(List<List<Page>> parts, int here)
    {
        var html = new HtmlWriter();
        html.Open("ul").Line();
        for (var i = 0; i < parts.Count; i++)
        {
            if (i != here)
            {
                var chapters = parts[i].Where(p => p.Kind is PageKind.Chapter).ToList();
                var said = _bindery.Say("paper-part-holds", ("n", Figures.Plain(i + 1)), ("from", chapters[0].Title.PlainWords), ("to", chapters[^1].Title.PlainWords));
                html.Open("li").Open("a", ("href", NameOf(_id, i))).Text(said).Close().CloseLine();
            }
        }

        return html.CloseLine().ToString();
    }

    private string Write(Page page, Func<string, string?> fileOf, FaultList faults)
    {
        const string Closing = "</section>";
        var head = new HtmlWriter();
        head.Open("section", ("id", page.Id), ("class", page.Kind is PageKind.Chapter or PageKind.Cover or PageKind.Letter ? "part fresh" : "part"), ("lang", page.Language == _bindery.Language ? null : page.Language));
        head.Open("h2", ("lang", Frame.LanguageOf(page) == page.Language ? null : Frame.LanguageOf(page))).Text(page.Number.Length == 0 ? page.Title.PlainWords : $"{page.Number} {page.Title.PlainWords}").Close();
        return head.Close().ToString()[..^Closing.Length] + "\n" + PageWriter.Write(page, Manner.Paper(fileOf), _addresses, _bindery, faults) + Closing + "\n";
    }
}
