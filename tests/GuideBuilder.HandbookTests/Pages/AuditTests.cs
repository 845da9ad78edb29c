using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>What every page of every home must be, found in the bytes as a browser parses them.</summary>
public sealed class AuditTests(Handbooks handbooks)
{
    [Fact]
    public void The_first_home_has_at_least_25_pages() => Assert.True(handbooks.PagesOf(Handbooks.Homes[0]).Length >= 25);

    [Fact]
    public void Every_page_has_a_language_a_title_of_its_own_and_one_main_heading() => Findings.AreNone(
        from home in Handbooks.Homes
        let pages = handbooks.PagesOf(home).Select(page => (page, tree: handbooks.Parsed(home, page))).ToArray()
        from page in pages
        let title = page.tree.Title
        let wrong = page.tree.DocumentElement.GetAttribute("lang") is not { Length: > 0 } ? "no lang"
            : title is not { Length: > 0 } ? "no title"
            : pages.Count(other => other.tree.Title == title) > 1 ? "title not unique"
            : page.tree.QuerySelectorAll("h1").Length != 1 ? "not one h1"
            : null
        where wrong is not null
        select $"{home}/{page.page}: {wrong}");

    [Fact]
    public void Every_page_leads_back_to_the_cover() => Findings.AreNone(
        from home in Handbooks.Homes
        from page in handbooks.PagesOf(home)
        where page != "index.html" && !handbooks.Parsed(home, page).QuerySelectorAll("a").Any(a => a.GetAttribute("href") == "index.html")
        select $"{home}/{page}");

    [Fact]
    public void No_heading_level_is_skipped() => Findings.AreNone(
        from home in Handbooks.Homes
        from page in handbooks.PagesOf(home)
        let levels = handbooks.Parsed(home, page).QuerySelectorAll("h1,h2,h3,h4,h5,h6").Select(h => h.LocalName[1] - '0').ToArray()
        from place in Enumerable.Range(1, Math.Max(0, levels.Length - 1))
        where place < levels.Length && levels[place] > levels[place - 1] + 1
        select $"{home}/{page}: h{levels[place - 1]} is followed by h{levels[place]}");

    [Fact]
    public void Ids_are_unique_within_a_page() => Findings.AreNone(
        from home in Handbooks.Homes
        from page in handbooks.PagesOf(home)
        from id in handbooks.Parsed(home, page).QuerySelectorAll("[id]").GroupBy(e => e.Id, StringComparer.Ordinal)
        where id.Count() > 1
        select $"{home}/{page}#{id.Key}");

    [Fact]
    public void Every_link_within_a_handbook_leads_somewhere() => Findings.AreNone(
        from home in Handbooks.Homes
        let ids = handbooks.PagesOf(home).ToDictionary(page => page, page => Ids(home, page), StringComparer.Ordinal)
        let files = Directory.EnumerateFiles(handbooks.Of(home)).Select(path => Path.GetFileName(path)!).ToHashSet(StringComparer.Ordinal)
        from page in ids.Keys
        from link in handbooks.Parsed(home, page).QuerySelectorAll("[href],[src]")
        let address = link.GetAttribute("href") ?? link.GetAttribute("src")!
        where !IsOutside(address) && !Resolves(page, address, files, ids)
        select $"{home}/{page}: {address}");

    [Fact]
    public void The_same_words_never_lead_to_two_places_within_a_page() => Findings.AreNone(
        from home in Handbooks.Homes
        from page in handbooks.PagesOf(home)
        from words in handbooks.Parsed(home, page).QuerySelectorAll("a[href]").GroupBy(a => a.GetAttribute("aria-label") ?? a.TextContent.Trim(), StringComparer.Ordinal)
        let places = words.Select(a => a.GetAttribute("href")).Distinct(StringComparer.Ordinal).ToArray()
        where places.Length > 1
        select $"{home}/{page}: '{words.Key}' leads to {string.Join(" and ", places)}");

    private HashSet<string> Ids(string home, string page) =>
        handbooks.Parsed(home, page).QuerySelectorAll("[id]").Select(e => e.Id!).ToHashSet(StringComparer.Ordinal);

    private static bool IsOutside(string address) =>
        new[] { "https:", "http:", "mailto:", "tel:" }.Any(scheme => address.StartsWith(scheme, StringComparison.Ordinal));

    // Exact letter case, because the disk of the next reader may care.
    private static bool Resolves(string page, string address, HashSet<string> files, Dictionary<string, HashSet<string>> ids)
    {
        var (file, fragment) = address.Split('#', 2) is [var name, var part] ? (name, part) : (address, null);
        var target = file.Length == 0 ? page : file;
        return files.Contains(target) && (fragment is null || (ids.TryGetValue(target, out var known) && known.Contains(fragment)));
    }
}
