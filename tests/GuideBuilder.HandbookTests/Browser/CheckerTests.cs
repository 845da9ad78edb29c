using Deque.AxeCore.Playwright;
using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>The accessibility checker finds what is wrong, and only that: a checker that is deaf would pass every handbook.</summary>
public sealed class CheckerTests(Chromium chromium)
{
    private const string Right = """
        <!doctype html><html lang="en-GB"><head><title>Cover</title></head>
        <body><main><h1>Cover</h1><p style="color: #000; background: #fff">Call first.</p></main></body></html>
        """;

    [Fact]
    public async Task A_page_that_is_right_passes() => Assert.Empty(await ViolationsAsync(Right));

    [Theory]
    [InlineData(" lang=\"en-GB\"", "", "html-has-lang")]
    [InlineData("<title>Cover</title>", "", "document-title")]
    [InlineData("color: #000", "color: #ccc", "color-contrast")]
    [InlineData("Call first.", "<img src=\"data:,\">", "image-alt")]
    public async Task A_page_with_one_mistake_is_told_of_it(string right, string wrong, string rule) =>
        Assert.Equal([rule], await ViolationsAsync(Right.Replace(right, wrong, StringComparison.Ordinal)));

    [Theory]
    [InlineData("<figure class=drawing><svg viewBox='0 0 100 40' width=100><text x=10 y=20>in</text></svg></figure>", "")]
    [InlineData("<figure class=drawing><svg viewBox='0 0 100 40' width=100><text x=90 y=20>further out</text></svg></figure>", "runs out: further out")]
    [InlineData("<figure class=drawing><svg viewBox='0 0 100 40' width=100><text x=10 y=20>one</text><text x=12 y=22>two</text></svg></figure>", "lies over: one / two")]
    public async Task A_drawing_whose_words_cannot_be_read_is_told(string html, string found) => Assert.Equal(found, await FoundAsync(html, PageScripts.Drawn));

    [Theory]
    [InlineData("<p>in</p>", "")]
    [InlineData("<p style='width: 900px'>wide</p>", "off the sheet: p wide")]
    [InlineData("<p style='height: 1200px; break-inside: avoid'>high</p>", "higher than a sheet: p high")]
    public async Task What_stands_off_a_sheet_is_told(string html, string found) => Assert.Equal(found, await FoundAsync(html, PageScripts.OffTheSheet));

    private async Task<string> FoundAsync(string html, string script)
    {
        var page = await chromium.NewPageAsync();
        await page.SetViewportSizeAsync(642, 900);
        await page.SetContentAsync($"<!doctype html><title>Cover</title><main>{html}</main>");
        var found = await page.EvaluateAsync<string[]>(script);
        await page.Context.CloseAsync();
        return string.Join("; ", found);
    }

    private async Task<string[]> ViolationsAsync(string html)
    {
        var page = await chromium.NewPageAsync();
        await page.SetContentAsync(html);
        var result = await page.RunAxe();
        await page.Context.CloseAsync();
        return [.. result.Violations.Select(violation => violation.Id)];
    }
}
