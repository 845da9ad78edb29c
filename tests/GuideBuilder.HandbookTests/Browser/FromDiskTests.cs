using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>A handbook opens from disk where no script runs; with script, the walk over the pages hears the same.</summary>
public sealed class FromDiskTests(Handbooks handbooks, Chromium chromium)
{
    [Fact]
    public async Task Every_page_of_the_first_home_opens_in_silence_without_script()
    {
        var home = Handbooks.Homes[0];
        var page = await chromium.NewPageAsync(script: false);
        var heard = new List<string>();
        Noise.Hear(page, heard.Add);

        foreach (var name in handbooks.PagesOf(home))
        {
            await page.GotoAsync("file://" + Path.Combine(handbooks.Of(home), name));
            Assert.True(await page.Locator("h1").CountAsync() == 1, name);
            Assert.True(await page.Locator("main").IsVisibleAsync(), name);
        }

        await page.Context.CloseAsync();
        Findings.AreNone(heard);
    }
}
