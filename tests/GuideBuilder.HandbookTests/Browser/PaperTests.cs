using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What comes out of a printer: the short edition fits on four sides, and nothing is cut off on any sheet.</summary>
public sealed partial class PaperTests(Handbooks handbooks, Chromium chromium)
{
    // The width of an A4 sheet between its margins, in the pixels of the stylesheet (96 an inch).
    private const int SheetWidth = 642;

    private const int MostSides = 4;

    public static TheoryData<string> Homes => [.. Handbooks.Homes];

    [Theory]
    [MemberData(nameof(Homes))]
    public async Task The_short_edition_fits_on_four_sides_tagged_and_with_an_outline(string home)
    {
        var page = await OpenAsync(home, "short-edition.html");
        var pdf = Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true, Tagged = true, Outline = true }));
        await page.Context.CloseAsync();

        Assert.InRange(PageOfPdf().Count(pdf), 1, MostSides);
        Assert.Contains("/StructTreeRoot", pdf, StringComparison.Ordinal);
        Assert.Contains("/Outlines", pdf, StringComparison.Ordinal);
        Assert.Contains("/Lang (en-GB)", pdf, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("short-edition.html")]
    [InlineData("door-sheet.html")]
    [InlineData("paper.html")]
    [InlineData("large-print.html")]
    public async Task Nothing_is_wider_than_a_sheet(string name)
    {
        var page = await OpenAsync(Handbooks.Homes[0], name);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await page.SetViewportSizeAsync(SheetWidth, 900);

        var found = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('main table, main svg, main figure, main p, main h2, main h3, main li')]
              .filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
              .map(e => e.localName + ' ' + e.textContent.trim().slice(0, 60))
            """);
        await page.Context.CloseAsync();

        Findings.AreNone(found);
    }

    [Theory]
    [MemberData(nameof(Homes))]
    public async Task The_sheet_for_the_door_is_one_page(string home)
    {
        var page = await OpenAsync(home, "door-sheet.html");
        var pdf = Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true }));
        await page.Context.CloseAsync();

        Assert.Equal(1, PageOfPdf().Count(pdf));
    }

    [Fact]
    public void Both_other_editions_carry_every_caution_that_could_be_fatal() => Findings.AreNone(
        from home in Handbooks.Homes
        let fatal = handbooks.PagesOf(home).Where(p => handbooks.Parsed(home, p) is { Body.ClassName: "hazard" } page && page.Body!.TextContent.Contains("With nothing done: death", StringComparison.Ordinal)).ToArray()
        from edition in new[] { "short-edition", "large-print" }
        let words = string.Concat(handbooks.PagesOf(home).Where(p => p.StartsWith(edition, StringComparison.Ordinal)).Select(p => handbooks.Parsed(home, p).Body!.TextContent))
        from hazard in fatal
        let title = handbooks.Parsed(home, hazard).QuerySelector("h1")!.TextContent
        where fatal.Length == 0 || !words.Contains(title, StringComparison.Ordinal)
        select $"{home}/{edition}: {title}");

    [Fact]
    public async Task Each_printed_sheet_bears_its_number()
    {
        var numbered = await PrintAsync("");
        var bare = await PrintAsync("@page { @top-right { content: none } }");

        Assert.True(PageOfPdf().Count(numbered) > 1);
        Assert.InRange(Lines(numbered) - Lines(bare), PageOfPdf().Count(numbered), int.MaxValue);
    }

    [Fact]
    public async Task No_word_of_the_large_print_is_smaller_than_18_points()
    {
        var found = new List<string>();
        foreach (var name in handbooks.PagesOf(Handbooks.Homes[0]).Where(p => p.StartsWith("large-print", StringComparison.Ordinal)))
        {
            var page = await OpenAsync(Handbooks.Homes[0], name);
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            found.AddRange(await page.EvaluateAsync<string[]>(PageScripts.Small));
            await page.Context.CloseAsync();
        }

        Findings.AreNone(found.Distinct());
    }

    private async Task<string> PrintAsync(string more)
    {
        var page = await OpenAsync(Handbooks.Homes[0], "short-edition.html");
        await page.EvaluateAsync("more => { const sheet = new CSSStyleSheet(); sheet.replaceSync(more); document.adoptedStyleSheets = [sheet]; }", more);
        var pdf = Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true }));
        await page.Context.CloseAsync();
        return pdf;
    }

    // How often a text is shown in the pages of a document.
    private static int Lines(string pdf) => StreamOfPdf().Matches(pdf).Select(m => Inflated(m.Groups[1].Value)).Where(t => t.Contains("BT\n", StringComparison.Ordinal)).Sum(t => ShowsText().Count(t));

    private static string Inflated(string stream)
    {
        using var text = new StreamReader(new ZLibStream(new MemoryStream(Encoding.Latin1.GetBytes(stream)), CompressionMode.Decompress), Encoding.Latin1);
        return text.ReadToEnd();
    }

    private async Task<IPage> OpenAsync(string home, string name)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync("file://" + Path.Combine(handbooks.Of(home), name));
        return page;
    }

    [GeneratedRegex(@"/Filter /FlateDecode[^>]*>>\s*stream\r?\n(.*?)\r?\nendstream", RegexOptions.Singleline)]
    private static partial Regex StreamOfPdf();

    [GeneratedRegex(@"\bT[jJ]\b")]
    private static partial Regex ShowsText();

    [GeneratedRegex(@"/Type /Page\b")]
    private static partial Regex PageOfPdf();
}
