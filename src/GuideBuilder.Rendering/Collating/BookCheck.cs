using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace GuideBuilder.Rendering.Collating;

/// <summary>Reads the bytes of a bound folder as a browser would, trusting no model of its pages: errors of HTML, links, ids, headings, alternatives, what a template left behind, and size.</summary>
public static class BookCheck
{
    /// <summary>The kind of a finding on how a page is written in HTML.</summary>
    public const string Html = "html";

    // The largest page and the cover, in bytes as they are sent without compression.
    private const int MostBytes = 150_000;
    private const int MostOfCover = 60_000;
    private const int MostOfWhole = 1_000_000;

    private static readonly ImmutableArray<string> Outside = ["https:", "http:", "mailto:", "tel:", "data:image/"];
    private static readonly ImmutableArray<string> LeftBehind = ["{{", "}}", "see:", "blank:", "\uF8F0", "\uFFFD"];
    private static readonly ImmutableArray<string> Wholes = ["paper", "large-print", "how-this-was-worked-out"];

    /// <summary>The findings on a folder of files.</summary>
    public static ImmutableArray<Finding> Of(string folder, IReadOnlyList<(string Name, ReadOnlyMemory<byte> Bytes)> files)
    {
        var found = new List<Finding>();
        var pages = files.Where(f => f.Name.EndsWith(".html", StringComparison.Ordinal)).Select(f => (f.Name, Tree: Parse(folder, f.Name, f.Bytes, found), f.Bytes.Length)).ToList();
        var ids = pages.ToDictionary(p => p.Name, p => p.Tree.QuerySelectorAll("[id]").Select(e => e.Id!).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
        var names = files.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, tree, length) in pages)
        {
            var where = $"{folder}/{name}";
            found.AddRange(Page(where, name, tree, length).Concat(Links(where, name, tree, names, ids)));
        }

        found.AddRange(pages.GroupBy(p => p.Tree.Title, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => Error("title-twice", folder, $"{string.Join(" and ", g.Select(p => p.Name))} have the title “{g.Key}”.")));
        return [.. found];
    }

    private static IHtmlDocument Parse(string folder, string name, ReadOnlyMemory<byte> bytes, List<Finding> found)
    {
        var parser = new HtmlParser();
        parser.Error += (_, problem) =>
        {
            if (problem is AngleSharp.Html.Dom.Events.HtmlErrorEvent error)
            {
                found.Add(Error(Html, Invariant($"{folder}/{name}:{error.Position.Line}:{error.Position.Column}"), $"This is not right HTML: {error.Message}"));
            }
        };
        using var stream = new MemoryStream(bytes.ToArray());
        return parser.ParseDocument(stream);
    }

    private static IEnumerable<Finding> Page(string where, string name, IHtmlDocument tree, int length)
    {
        var most = name == "index.html" ? MostOfCover : Wholes.Any(w => name.StartsWith(w, StringComparison.Ordinal)) ? MostOfWhole : MostBytes;
        if (length > most)
        {
            yield return new(Severity.Warning, "size", where, Invariant($"It is {length:#,0} bytes long, above {most:#,0}."));
        }

        if (string.IsNullOrEmpty(tree.DocumentElement.GetAttribute("lang")))
        {
            yield return Error("language", where, "The page does not say its language.");
        }

        if (tree.QuerySelectorAll("h1").Length != 1)
        {
            yield return Error("heading", where, "There is not exactly one main heading.");
        }

        var levels = tree.QuerySelectorAll("h1,h2,h3,h4,h5,h6").Select(h => h.LocalName[1] - '0').ToArray();
        if (Enumerable.Range(1, Math.Max(0, levels.Length - 1)).Any(i => levels[i] > levels[i - 1] + 1))
        {
            yield return Error("heading", where, "A level of headings is skipped.");
        }

        foreach (var twice in tree.QuerySelectorAll("[id]").GroupBy(e => e.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            yield return Error("id-twice", where, $"The id {twice.Key} stands twice.");
        }

        if (tree.QuerySelectorAll("img:not([alt]), svg[role=img]:not([aria-labelledby]):not([aria-label])").Length > 0)
        {
            yield return Error("alternative", where, "A picture has no words for those who do not see it.");
        }

        var text = tree.Body?.TextContent ?? "";
        foreach (var mark in LeftBehind.Where(m => text.Contains(m, StringComparison.Ordinal)))
        {
            yield return Error("left-behind", where, $"A template or a link left “{mark}” behind.");
        }
    }

    private static IEnumerable<Finding> Links(string where, string name, IHtmlDocument tree, HashSet<string> names, Dictionary<string, HashSet<string>> ids)
    {
        foreach (var address in tree.QuerySelectorAll("[href],[src]").Select(e => e.GetAttribute("href") ?? e.GetAttribute("src")!).Distinct(StringComparer.Ordinal))
        {
            if (Outside.Any(s => address.StartsWith(s, StringComparison.Ordinal)))
            {
                continue;
            }

            var (file, fragment) = address.Split('#', 2) is [var before, var after] ? (before, after) : (address, null);
            var target = file.Length == 0 ? name : file;
            if (!names.Contains(target))
            {
                yield return Error("link", where, $"The link to {address} leads to no file of the handbook.");
            }
            else if (fragment is not null && !(ids.TryGetValue(target, out var known) && known.Contains(fragment)))
            {
                yield return Error("link", where, $"The link to {address} leads to no place on that page.");
            }
        }
    }

    private static Finding Error(string kind, string where, string what) => new(Severity.Error, kind, where, what);
}
