using System.Text.RegularExpressions;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>The questionnaire as a page, in a real browser: filled in by keyboard, silent, and forgetful unless told otherwise.</summary>
public sealed partial class FormTests(Chromium chromium, Questionnaire questionnaire)
{
    private const int MostPresses = 1500;

    [Fact]
    public async Task The_second_home_is_filled_in_at_phone_width_by_keyboard_only_and_binds()
    {
        using var folder = new Folder();
        var (page, heard) = await questionnaire.OpenAsync(chromium);

        await Ticked(page, "o-home.nation-england", 0);
        await Ticked(page, "o-home.kind-detached", 2);
        await ReachAsync(page, "a-home.built");
        await page.Keyboard.TypeAsync("about 1954");
        await ReachAsync(page, "o-home.built-unknown");
        await page.Keyboard.PressAsync("Space");
        await Ticked(page, "o-wish.reason-room-needed", 0);
        await Ticked(page, "o-wish.moves-cutout", 0);
        await Ticked(page, "o-wish.moves-meter", 0);
        await ReachAsync(page, "download");
        var text = await Questionnaire.DownloadAsync(page, () => page.Keyboard.PressAsync("Enter"));

        Assert.Equal(
            ["nation: england", "kind: terrace", "built: unknown", "- room-needed", "- cutout", "- meter"],
            text.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#' && !l.EndsWith(':') && l != "format: 1"));
        Assert.Equal(0, (await Handbooks.BindAsync(folder.Put("our-home.yaml", text), folder.At("book"))).Exit);
        Assert.DoesNotContain(heard, h => !h.StartsWith("request: blob:", StringComparison.Ordinal));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Nothing_is_stored_until_the_reader_says_so_and_clearing_leaves_nothing()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        await page.Locator("#o-home\\.nation-wales").CheckAsync();
        Assert.Equal("0 0 ", await StoredAsync(page));

        await page.Locator("#own-device").CheckAsync();
        await page.Locator("#o-home\\.kind-flat").CheckAsync();
        Assert.Contains("kept on this device", await page.Locator("#kept").TextContentAsync(), StringComparison.Ordinal);
        Assert.Equal("1 0 ", await StoredAsync(page));

        await page.ReloadAsync();
        Assert.True(await page.Locator("#o-home\\.kind-flat").IsCheckedAsync());
        Assert.True(await page.Locator("#own-device").IsCheckedAsync());

        await page.Locator("#clear").ClickAsync();
        await page.Locator("#clear-yes").ClickAsync();
        Assert.Equal("0 0 ", await StoredAsync(page));
        Assert.Equal(0, await page.Locator("input:checked").CountAsync());

        await page.Locator("#o-home\\.nation-wales").CheckAsync();
        await page.Locator("#own-device").CheckAsync();
        await page.Locator("#own-device").UncheckAsync();
        Assert.Equal("0 0 ", await StoredAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task What_the_page_cannot_read_stays_kept_until_the_reader_says_otherwise()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        await page.EvaluateAsync("() => localStorage.setItem('guidebuilder/questionnaire', 'home: {nation: wales}\\n')");
        await page.ReloadAsync();
        await page.Locator("#o-home\\.kind-flat").CheckAsync();

        Assert.False(await page.Locator("#own-device").IsCheckedAsync());
        Assert.Contains("cannot read", await page.Locator("#kept").TextContentAsync(), StringComparison.Ordinal);
        Assert.Equal("home: {nation: wales}\n", await page.EvaluateAsync<string>("() => localStorage.getItem('guidebuilder/questionnaire')"));
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Questions_come_and_go_with_the_answers()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        var distance = page.Locator("#q-place\\.gas-distance");
        Assert.True(await distance.IsVisibleAsync());

        await page.Locator("#o-place\\.near-none").CheckAsync();
        Assert.False(await distance.IsVisibleAsync());

        await page.Locator("#o-place\\.near-gas-meter").CheckAsync();
        Assert.True(await distance.IsVisibleAsync());
        Assert.False(await page.Locator("#o-place\\.near-none").IsCheckedAsync());

        await page.Locator("#a-place\\.gas-distance").FillAsync("0.7 m");
        await page.Locator("#o-place\\.near-none").CheckAsync();
        Assert.DoesNotContain("gas-distance", await Questionnaire.DownloadAsync(page), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("place.distance", "4 kg", "The unit “kg” does not fit here. Write a number from 0 m to 200 m.")]
    [InlineData("place.distance", "300 m", "This is out of range. Write a number from 0 m to 200 m.")]
    [InlineData("place.distance", "far", "This cannot be read as an amount. Write a number from 0 m to 200 m.")]
    [InlineData("dates.needed-by", "15/03/2027", "“15/03/2027” is not a day that can be read. Write year-month-day, such as 2027-03-15.")]
    [InlineData("dates.away", "2027-03-15 to 2027-03-01", "“2027-03-15 to 2027-03-01” is not a span of days. Write the first day, the word to, and the last day.")]
    public async Task A_wrong_answer_is_told_beside_it_and_keeps_the_file_from_being_made(string name, string typed, string said)
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        var line = page.Locator($"[id='a-{name}']");
        await line.FillAsync(typed);
        await line.BlurAsync();

        Assert.Equal(said, await page.Locator($"[id='f-{name}']").TextContentAsync());
        Assert.Equal("true", await line.GetAttributeAsync("aria-invalid"));
        await page.Locator("#download").ClickAsync();
        Assert.Contains("The file was not made", await page.Locator("#told").TextContentAsync(), StringComparison.Ordinal);
        Assert.Equal("a-" + name, await page.EvaluateAsync<string>("() => document.activeElement.id"));

        await page.Locator($"[id='o-{name}-unknown']").CheckAsync();
        Assert.False(await page.Locator($"[id='f-{name}']").IsVisibleAsync());
        Assert.Contains($"  {name.Split('.')[1]}: unknown\n", await Questionnaire.DownloadAsync(page), StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Progress_counts_what_is_answered_not_known_and_left()
    {
        var (page, _) = await questionnaire.OpenAsync(chromium);
        await page.Locator("#o-home\\.nation-wales").CheckAsync();
        await page.Locator("#o-home\\.kind-unknown").CheckAsync();

        Assert.Matches("^Answered: 1\\. Not known: 1\\. Left out so far: [0-9]+\\.$", await page.Locator("#progress").TextContentAsync());
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(320)]
    [InlineData(1280)]
    public async Task The_page_can_be_used_by_everybody_and_is_silent(int width)
    {
        var (page, heard) = await questionnaire.OpenAsync(chromium, width);
        await page.Locator("#a-place\\.distance").FillAsync("4 kg");
        await page.Locator("#clear").ClickAsync();

        Findings.AreNone(await Axe.FindAsync(page));
        Findings.AreNone(await page.EvaluateAsync<string[]>(PageScripts.Lost));
        Findings.AreNone(heard);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Without_script_the_page_says_what_to_do()
    {
        var page = await chromium.NewPageAsync(script: false);
        await page.GotoAsync("file://" + questionnaire.Path);

        Assert.True(await page.Locator("#needs-script").IsVisibleAsync());
        await page.Context.CloseAsync();
    }

    [Fact]
    public void The_page_needs_nothing_else_and_lets_only_its_own_style_and_scripts_run()
    {
        var html = File.ReadAllText(questionnaire.Path);

        Assert.Matches("<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'sha256-[A-Za-z0-9+/=]{44}'; script-src 'sha256-[A-Za-z0-9+/=]{44}' 'sha256-[A-Za-z0-9+/=]{44}'; base-uri 'none'; form-action 'none'\">", html);
        Assert.Empty(Elsewhere().Matches(html).Select(m => m.Value));
    }

    [Fact]
    public async Task The_checker_of_HTML_finds_no_error()
    {
        var checker = Repository.At("artifacts/npm/node_modules/vnu-jar/build/dist/vnu.jar");
        Assert.SkipUnless(File.Exists(checker), "the Nu checker is not there (tests/run fetches it)");
        Assert.SkipUnless(File.Exists("/usr/bin/java"), "no Java is installed");

        // The checker's list of properties is older than SVG 2, which has paint-order.
        var said = await Tool.RunAsync("/usr/bin/java", "-jar", checker, "--errors-only", "--filterpattern", ".*paint-order.*", questionnaire.Path);

        Assert.Equal("", said.Errors);
    }

    private static Task<string> StoredAsync(IPage page) =>
        page.EvaluateAsync<string>("async () => localStorage.length + ' ' + sessionStorage.length + ' ' + document.cookie + (await indexedDB.databases()).map(d => d.name).join()");

    // Reaches the first box of a group by keyboard and ticks it, or, so many arrows down, another of a group of which one holds.
    private static async Task Ticked(IPage page, string id, int down)
    {
        await ReachAsync(page, id);
        await page.Keyboard.PressAsync("Space");
        for (var press = 0; press < down; press++)
        {
            await page.Keyboard.PressAsync("ArrowDown");
        }
    }

    private static async Task ReachAsync(IPage page, string id)
    {
        for (var press = 0; press < MostPresses; press++)
        {
            if (await page.EvaluateAsync<string>("() => document.activeElement.id") == id)
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"the keyboard does not reach {id}");
    }

    [GeneratedRegex("(src|href)=\"[^#\"][^\"]*\"|url\\(|@import|https?://[^\"\\s<]*", RegexOptions.CultureInvariant)]
    private static partial Regex Elsewhere();
}
