using System.Text;
using GuideBuilder.Rendering.Markup;

namespace GuideBuilder.Rendering.Catalogues;

/// <summary>One handbook as the catalogue knows it: the folder that it stands in, and what it tells.</summary>
public sealed record CatalogueLine(string Id, BookAbout About);

/// <summary>The list page over many handbooks. Where all are public it is a public list by nation, building and way; else it is a private list by customer, which no search engine is to read.</summary>
public static class Catalogue
{
    private const string Cover = "index.html";
    private const string Style = "style.css";
    private const string Robots = "robots.txt";
    private const string SiteMap = "sitemap.xml";

    /// <summary>Every name that a catalogue may write.</summary>
    public static ImmutableArray<string> Names { get; } = [Cover, Style, Robots, SiteMap];

    /// <summary>The files of the list.</summary>
    public static ImmutableArray<BoundFile> Render(ImmutableArray<CatalogueLine> lines, Guidance guidance, string? baseAddress)
    {
        var faults = new FaultList();
        var labels = new Phrases(guidance.Labels, faults, guidance.Language.Id);
        var isPublic = !lines.IsEmpty && lines.All(l => l.About.Edition == EditionKind.Public);
        var body = isPublic ? PublicList(lines, guidance, labels) : PrivateList(lines, guidance, labels);
        return
        [
            Text(Cover, Page(guidance, labels, body, isPublic)),
            Text(Style, guidance.Look.Files["stylesheet.css"].Words.ReplaceLineEndings("\n")),
            .. isPublic && baseAddress is null ? [] : new[] { Text(Robots, RobotsText(isPublic, baseAddress)) },
            .. isPublic && baseAddress is not null ? new[] { Text(SiteMap, Map(lines, baseAddress)) } : [],
        ];
    }

    private static BoundFile Text(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    private static string Page(Guidance guidance, Phrases labels, string body, bool isPublic)
    {
        var (html, title) = (new HtmlWriter(), labels.Say(isPublic ? "catalogue-public" : "catalogue-private"));
        html.Open("html", ("lang", guidance.Language.Id)).Line().Open("head").Line();
        html.Void("meta", ("charset", "utf-8")).Line();
        html.Void("meta", ("http-equiv", "Content-Security-Policy"), ("content", "default-src 'none'; style-src 'self'; base-uri 'none'; form-action 'none'")).Line();
        html.Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line();
        if (!isPublic)
        {
            html.Void("meta", ("name", "robots"), ("content", "noindex")).Line();
        }

        html.Open("title").Bare($"{Tongues.Plain(title)}, {guidance.Head.Title.Words}").CloseLine();
        html.Void("link", ("rel", "stylesheet"), ("href", Style)).Line().CloseLine().Open("body", ("class", "catalogue")).Line();
        html.Open("header", ("class", "running")).Open("p").Text(labels.Mark(guidance.Head.Title)).Close().CloseLine();
        html.Open("main", ("id", "text")).Line().Open("h1").Text(title).CloseLine();
        html.Open("p").Text(labels.Say(isPublic ? "catalogue-public-lead" : "catalogue-private-lead")).CloseLine();
        html.Raw(body).CloseLine();
        html.Open("footer").Line().Open("p").Text(labels.Say("letter-comes-first")).CloseLine();
        html.Open("p").Text(labels.Say("frame-check", ("date", new Dates(labels, guidance.Head.EditionDate).OfGuidance(guidance.Head.ReviewBy)))).CloseLine();
        return "<!DOCTYPE html>\n" + html.CloseLine().CloseLine().CloseLine();
    }

    private static string PublicList(ImmutableArray<CatalogueLine> lines, Guidance guidance, Phrases labels)
    {
        var html = new HtmlWriter();
        foreach (var nation in guidance.Nations.Where(n => lines.Any(l => l.About.Nation == n.Id)))
        {
            html.Open("h2").Text(labels.Mark(nation.Title)).CloseLine();
            foreach (var building in lines.Where(l => l.About.Nation == nation.Id).GroupBy(l => l.About.Building).OrderBy(g => g.Key, StringComparer.Ordinal))
            {
                html.Open("h3").Text(Building(guidance, labels, building.Key)).CloseLine().Open("ul").Line();
                foreach (var line in building.OrderBy(l => WayAt(guidance, l)).ThenBy(l => l.Id, StringComparer.Ordinal))
                {
                    Public(html, line, guidance, labels);
                }

                html.CloseLine();
            }
        }

        return html.ToString();
    }

    // Two handbooks may tell of the same way, so each is named by its own id as well.
    private static void Public(HtmlWriter html, CatalogueLine line, Guidance guidance, Phrases labels)
    {
        var way = guidance.Ways.FirstOrDefault(w => w.Id == line.About.Way);
        html.Open("li").Open("a", ("href", $"{line.Id}/index.html")).Text($"{(way is null ? line.About.Way : labels.Mark(way.Title))} ({line.Id})").Close();
        if (way is { About.IsEmpty: false } && Plain(way.About, guidance) is { Length: > 0 } about)
        {
            html.Void("br").Text(about);
        }

        html.CloseLine();
    }

    private static string PrivateList(ImmutableArray<CatalogueLine> lines, Guidance guidance, Phrases labels)
    {
        if (lines.IsEmpty)
        {
            return $"<p>{Tongues.Html(labels.Say("catalogue-empty"))}</p>\n";
        }

        var html = new HtmlWriter();
        html.Open("div", ("class", "grid")).Open("table").Line().Open("thead").Open("tr");
        foreach (var head in new[] { "column-customer", "column-way", "column-edition" })
        {
            html.Open("th", ("scope", "col")).Text(labels.Say(head)).Close();
        }

        html.Close().CloseLine().Open("tbody").Line();
        foreach (var line in lines.OrderBy(l => l.About.For, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Id, StringComparer.Ordinal))
        {
            var way = guidance.Ways.FirstOrDefault(w => w.Id == line.About.Way);
            html.Open("tr").Open("th", ("scope", "row")).Open("a", ("href", $"{line.Id}/index.html")).Text(line.About.For.Length == 0 ? line.Id : $"{line.About.For} ({line.Id})").Close().Close();
            html.Open("td").Text(way is null ? line.About.Way : labels.Mark(way.Title)).Close();
            html.Open("td").Text(labels.Say($"edition-{line.About.Edition.ToString().ToLowerInvariant()}"));
            foreach (var (label, says) in Days(labels, line.About.Days))
            {
                html.Void("br").Text($"{labels.Say(label)}: {says}");
            }

            html.Close().CloseLine();
        }

        return html.CloseLine().CloseLine().CloseLine().ToString();
    }

    // In one cell, so that the list fits a phone.
    private static (string Label, string Says)[] Days(Phrases labels, BookDays days) =>
        [("column-bound-on", Day(labels, days.Bound)), ("column-works-day", days.IsHeld ? labels.Say("date-held") : Day(labels, days.Work)), ("column-needed-by", Day(labels, days.NeededBy))];

    private static string Day(Phrases labels, LocalDate? day) => day is { } known ? new Dates(labels, null).Short(known) : labels.Say("date-open");

    private static int WayAt(Guidance guidance, CatalogueLine line) => guidance.Ways.Select((w, i) => (w.Id, i)).Where(w => w.Id == line.About.Way).Select(w => w.i).FirstOrDefault(int.MaxValue);

    private static string Building(Guidance guidance, Phrases labels, string id) =>
        guidance.Questions.Where(q => q.Name == BookAbout.BuildingQuestion).SelectMany(q => q.Options).Where(o => o.Id == id).Select(o => labels.Mark(o.Wording)).FirstOrDefault(labels.Say("catalogue-building-open"));

    // The first paragraph of a text that has no template in it, without its links.
    private static string Plain(LocalText text, Guidance guidance) => text.Words.Contains("{{", StringComparison.Ordinal)
        ? ""
        : Tongues.Mark(text with { Words = new MarkupReader(text, text.Language, KnownIds.Of(guidance), new FaultList(), 0).Read(text.Words).OfType<Block.Prose>().Select(p => p.Words.PlainWords).FirstOrDefault("") }, guidance.Language.Id);

    private static string RobotsText(bool isPublic, string? baseAddress) => isPublic ? $"User-agent: *\nAllow: /\nSitemap: {baseAddress}{SiteMap}\n" : "User-agent: *\nDisallow: /\n";

    private static string Map(ImmutableArray<CatalogueLine> lines, string baseAddress)
    {
        var html = new HtmlWriter();
        html.Open("urlset", ("xmlns", "http://www.sitemaps.org/schemas/sitemap/0.9")).Line();
        foreach (var address in lines.Select(l => $"{baseAddress}{l.Id}/").Prepend(baseAddress))
        {
            html.Open("url").Open("loc").Bare(address).Close().CloseLine();
        }

        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + html.CloseLine();
    }
}
