using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>A handbook opens from disk without a word in the console and without asking a network.</summary>
public sealed class FromDiskTests(Handbooks handbooks, Chromium chromium)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Every_page_of_the_first_home_opens_in_silence(bool script)
    {
        var home = Handbooks.Homes[0];
        var page = await chromium.NewPageAsync(script);
        var heard = new List<string>();
        page.Console += (_, message) => heard.Add($"console: {message.Text}");
        page.PageError += (_, error) => heard.Add($"error: {error}");
        page.Request += (_, request) => { if (!request.Url.StartsWith("file://", StringComparison.Ordinal)) { heard.Add($"request: {request.Url}"); } };
        page.RequestFailed += (_, request) => heard.Add($"failed: {request.Url}");

        foreach (var name in handbooks.PagesOf(home))
        {
            await page.GotoAsync("file://" + Path.Combine(handbooks.Of(home), name));
            Assert.True(await page.Locator("h1").CountAsync() == 1, name);
        }

        await page.Context.CloseAsync();
        Findings.AreNone(heard);
    }
}
