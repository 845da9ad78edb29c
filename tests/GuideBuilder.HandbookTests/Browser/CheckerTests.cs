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

    private async Task<string[]> ViolationsAsync(string html)
    {
        var page = await chromium.NewPageAsync();
        await page.SetContentAsync(html);
        var result = await page.RunAxe();
        await page.Context.CloseAsync();
        return [.. result.Violations.Select(violation => violation.Id)];
    }
}
