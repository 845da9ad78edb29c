using GuideBuilder.HandbookTests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What the light script adds: ticks that stay, colours by choice, a filter in the index.</summary>
public sealed class ScriptTests(Handbooks handbooks, Chromium chromium)
{
    private const string Ticks = "input[type=checkbox]";

    [Fact]
    public async Task A_tick_stays_on_this_device_and_never_shows_in_another_handbook()
    {
        var (one, other) = (Handbooks.Homes[0], Handbooks.Homes[1]);
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, one, "your-part.html");
        var id = await page.Locator(Ticks).First.GetAttributeAsync("id");
        await page.CheckAsync($"#{id}");

        await page.ReloadAsync();
        Assert.True(await page.IsCheckedAsync($"#{id}"));

        await OpenAsync(page, other, "your-part.html");
        Assert.True(await page.Locator($"#{id}").CountAsync() == 1, $"{other} has no box {id} to compare with");
        Assert.Equal(0, await page.Locator(Ticks + ":checked").CountAsync());

        await OpenAsync(page, one, "your-part.html");
        await page.UncheckAsync($"#{id}");
        await page.ReloadAsync();
        Assert.False(await page.IsCheckedAsync($"#{id}"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_colours_that_a_reader_chose_stay_on_every_page_of_that_handbook_only()
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Handbooks.Homes[0], "index.html");
        var light = await GroundAsync(page);
        await page.SelectOptionAsync("#script-colours", "dark");
        var dark = await GroundAsync(page);
        Assert.NotEqual(light, dark);

        await OpenAsync(page, Handbooks.Homes[0], "money.html");
        Assert.Equal(dark, await GroundAsync(page));
        await OpenAsync(page, Handbooks.Homes[1], "money.html");
        Assert.Equal(light, await GroundAsync(page));

        await OpenAsync(page, Handbooks.Homes[0], "money.html");
        await page.SelectOptionAsync("#script-colours", "");
        Assert.Equal(light, await GroundAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task The_index_can_be_narrowed_to_a_word_and_says_how_much_is_left()
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Handbooks.Homes[0], "index-page.html");
        var all = await page.Locator("main dt:visible").CountAsync();

        await page.FillAsync("#script-filter", "cutout");

        var left = await page.Locator("main dt:visible").CountAsync();
        Assert.InRange(left, 1, all - 1);
        Assert.Equal(left, await page.Locator("main dd:visible").CountAsync());
        Assert.Equal($"{left} of {all} shown", await page.Locator("[role=status]").TextContentAsync());
        await page.FillAsync("#script-filter", "");
        Assert.Equal(all, await page.Locator("main dt:visible").CountAsync());
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("the-day.html")]
    [InlineData("your-part.html")]
    [InlineData("money.html")]
    [InlineData("index-page.html")]
    public async Task The_tab_key_goes_through_a_page_in_its_order_and_out_again(string name)
    {
        var page = await chromium.NewPageAsync();
        await OpenAsync(page, Handbooks.Homes[0], name);
        var wanted = await page.EvaluateAsync<int>("() => (window.stops = [...document.querySelectorAll('a[href], input, select, button')]).length");
        var met = new List<int>();
        for (var i = 0; i < wanted; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            met.Add(await page.EvaluateAsync<int>("() => window.stops.indexOf(document.activeElement)"));
        }

        await page.Context.CloseAsync();
        Assert.Equal(Enumerable.Range(0, wanted), met);
    }

    private Task<IResponse?> OpenAsync(IPage page, string home, string name) => page.GotoAsync("file://" + Path.Combine(handbooks.Of(home), name));

    private static Task<string> GroundAsync(IPage page) => page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).backgroundColor");
}
