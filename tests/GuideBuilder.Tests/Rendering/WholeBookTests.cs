using AngleSharp.Html.Parser;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering;

public sealed class WholeBookTests
{
    private static readonly string[] AtHomeElsewhere = ["because", "glossary", "sources", "costs", "open-questions", "consents", "clocks"];

    private static BoundBook Book { get; } = Bind(EditionKind.Householder);

    public static TheoryData<string> Pages => [.. Book.Files.Select(f => f.Name).Where(n => n.EndsWith(".html", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_page_has_one_title_one_h1_a_language_and_a_way_back_to_the_cover(string name)
    {
        var page = new HtmlParser().ParseDocument(Book.File(name));

        Assert.Equal("en-GB", page.DocumentElement.GetAttribute("lang"));
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.NotEqual("", page.Title);
        Assert.True(name == "index.html" || page.QuerySelector("header a[href='index.html']") is not null);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_id_stands_twice_on_a_page(string name)
    {
        var ids = new HtmlParser().ParseDocument(Book.File(name)).QuerySelectorAll("[id]").Select(e => e.Id!);

        Findings.AreNone(ids.GroupBy(i => i).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_leads_to_a_file_and_an_id_that_are_there(string name)
    {
        var parser = new HtmlParser();
        var dead =
            from link in parser.ParseDocument(Book.File(name)).QuerySelectorAll("a[href]")
            let parts = link.GetAttribute("href")!.Split('#')
            where !parts[0].Contains(':', StringComparison.Ordinal)
            let file = parts[0].Length == 0 ? name : parts[0]
            where Book.Files.All(f => f.Name != file) || (parts.Length > 1 && parser.ParseDocument(Book.File(file)).GetElementById(parts[1]) is null)
            select link.GetAttribute("href");

        Findings.AreNone(dead!);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_heading_level_is_skipped(string name)
    {
        var levels = new HtmlParser().ParseDocument(Book.File(name)).QuerySelectorAll("h1,h2,h3,h4,h5,h6").Select(h => h.LocalName[1] - '0').ToList();

        Findings.AreNone(levels.Zip(levels.Skip(1)).Where(p => p.Second > p.First + 1).Select(p => $"h{p.First} then h{p.Second}"));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void No_page_has_inline_style_or_script(string name)
    {
        var page = new HtmlParser().ParseDocument(Book.File(name));

        Assert.Empty(page.QuerySelectorAll("[style],style,script:not([src])"));
        Assert.DoesNotContain(page.All.SelectMany(e => e.Attributes), a => a.Name.StartsWith("on", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes() =>
        Assert.Equal(Book.Files.Select(f => Convert.ToHexString(f.Bytes.Span)), Bind(EditionKind.Householder).Files.Select(f => Convert.ToHexString(f.Bytes.Span)));

    [Theory]
    [InlineData(EditionKind.Householder, true)]
    [InlineData(EditionKind.Customer, true)]
    [InlineData(EditionKind.Neighbour, false)]
    [InlineData(EditionKind.Public, false)]
    public void Only_those_who_live_by_the_dates_get_them_as_a_calendar(EditionKind edition, bool calendar) =>
        Assert.Equal(calendar, Bound.With("", SamplePlan.For(edition: edition)).Value!.Files.Any(f => f.Name == "dates.ics"));

    [Fact]
    public void Names_of_files_come_from_ids_and_differ_in_more_than_case()
    {
        Assert.All(Book.Files, f => Assert.Matches("^[a-z0-9][a-z0-9-]*\\.(html|css|js|json|csv|ics)$", f.Name));
        Assert.Equal(Book.Files.Length, Book.Files.Select(f => f.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void The_public_edition_prints_no_date_of_the_calendar_no_address_and_no_answers_file()
    {
        var book = Bind(EditionKind.Public);

        foreach (var file in book.Files.Where(f => f.Name.EndsWith(".html", StringComparison.Ordinal)))
        {
            var text = book.File(file.Name);
            Assert.DoesNotContain("Avebury", text, StringComparison.Ordinal);
            Assert.DoesNotContain("sample.yaml", text, StringComparison.Ordinal);
            Assert.DoesNotContain("<time", text, StringComparison.Ordinal);
        }
    }

    private static BoundBook Bind(EditionKind edition)
    {
        var blocks = BlockMakers.ByName.Keys.Except(AtHomeElsewhere).Order(StringComparer.Ordinal).Select(b => $"## Block\n\n{{{{ block \"{b}\" }}}}\n\n");
        var staged = Handbook.Render(SamplePlan.For(edition: edition), Sample.Guidance([.. Bound.Pages, ("blocks", "# Blocks\n\n" + string.Concat(blocks))]));
        Findings.AreNone(staged.Faults.Select(f => f.ToString()));
        return staged.Value!;
    }
}
