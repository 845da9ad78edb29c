namespace GuideBuilder.Rendering.Pages;

/// <summary>One line of the list of chapters: a page, or the home pages of a kind of item. A page apart is bound beside the book and is no chapter of it; with a page that begins a part, a new file of the editions for paper begins.</summary>
internal sealed record ChapterLine(string? Page, PageKind? PagesOf, Place Place, bool IsApart = false, bool BeginsPart = false);

/// <summary>Reads look/chapters.txt: a page id a line, in reading order; an indented <c>pages of …</c> puts item pages there, <c>apart …</c> binds a page beside the book, <c>part …</c> begins a new part on paper with a page, <c>begins with …</c> puts a page in the place of the cover, <c>letter …</c> names a letter of an edition that has some only; # begins a remark.</summary>
internal static class BookOrder
{
    /// <summary>The id of the first page.</summary>
    internal const string Cover = "cover";

    /// <summary>The file of the look that lists the chapters.</summary>
    internal const string FileName = "chapters.txt";

    private const string PagesOf = "pages of ";

    private const string Apart = "apart ";

    private const string Part = "part ";

    private const string BeginsWith = "begins with ";

    private const string Letter = "letter ";

    private static readonly FrozenDictionary<string, PageKind> Kinds = new Dictionary<string, PageKind>(StringComparer.Ordinal)
    {
        ["parties"] = PageKind.Party, ["ways"] = PageKind.Way, ["steps"] = PageKind.Step, ["hazards"] = PageKind.Hazard, ["letters"] = PageKind.Letter,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The lines of the list, with pages that it forgets at the end, unless they belong elsewhere; wrong lines are faults.</summary>
    internal static ImmutableArray<ChapterLine> Read(LocalText list, ImmutableArray<Template> pages, FaultList faults, FrozenSet<string>? elsewhere = null)
    {
        var written = pages.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var lines = list.Words.ReplaceLineEndings("\n").Split('\n')
            .Select((words, i) => Line(words, new Place(list.Place.Path, list.Place.Line + i, 1), written, faults))
            .OfType<ChapterLine>()
            .ToList();
        var listed = lines.Select(l => l.Page).ToHashSet(StringComparer.Ordinal);
        foreach (var page in pages.Where(p => !listed.Contains(p.Id) && elsewhere?.Contains(p.Id) != true))
        {
            faults.Add(RenderingFaults.ChapterUnlisted(page.Text.Place, page.Id));
            lines.Add(new(page.Id, null, page.Text.Place));
        }

        return [.. lines];
    }

    /// <summary>The page that a list names as the first of its edition, in the place of the cover; null for the cover itself.</summary>
    internal static string? FirstPage(LocalText list) => After(list, BeginsWith).FirstOrDefault();

    /// <summary>The letters that a list names; none where its edition has all of them.</summary>
    internal static IEnumerable<string> Letters(LocalText list) => After(list, Letter);

    /// <summary>Every page that a list names.</summary>
    internal static IEnumerable<string> Named(LocalText list) =>
        [.. Lines(list).Where(l => l.Length > 0 && !l.StartsWith('#') && !l.Contains(' ', StringComparison.Ordinal)), .. After(list, Apart), .. After(list, Part), .. After(list, BeginsWith)];

    private static IEnumerable<string> After(LocalText list, string word) => Lines(list).Where(l => l.StartsWith(word, StringComparison.Ordinal)).Select(l => l[word.Length..].Trim());

    private static IEnumerable<string> Lines(LocalText list) => list.Words.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim());

    private static ChapterLine? Line(string words, Place place, HashSet<string> written, FaultList faults)
    {
        var line = words.Trim();
        if (line.Length == 0 || line.StartsWith('#'))
        {
            return null;
        }

        if (line.StartsWith(BeginsWith, StringComparison.Ordinal))
        {
            return new(Cover, null, place);
        }

        if (line.StartsWith(Letter, StringComparison.Ordinal))
        {
            return null;
        }

        if (line.StartsWith(PagesOf, StringComparison.Ordinal))
        {
            return Kind(line[PagesOf.Length..], place, faults);
        }

        var isApart = line.StartsWith(Apart, StringComparison.Ordinal);
        var beginsPart = line.StartsWith(Part, StringComparison.Ordinal);
        var page = (isApart ? line[Apart.Length..] : beginsPart ? line[Part.Length..] : line).Trim();
        if (written.Contains(page))
        {
            return new(page, null, place, isApart, beginsPart);
        }

        faults.Add(RenderingFaults.ChapterMissing(place, page));
        return null;
    }

    private static ChapterLine? Kind(string name, Place place, FaultList faults)
    {
        if (Kinds.TryGetValue(name, out var kind))
        {
            return new(null, kind, place);
        }

        faults.Add(RenderingFaults.ChapterKindUnknown(place, name));
        return null;
    }
}
