using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What a person needs of a page, whatever they read it with: checked in the real browser.</summary>
public sealed class AccessTests(PageWalk walk) : IClassFixture<PageWalk>
{
    [Fact]
    public async Task The_accessibility_checker_finds_nothing_wrong_and_nothing_undecided() => Findings.AreNone(await walk.FoundAsync("axe"));

    [Fact]
    public async Task Nothing_runs_out_of_a_page_320_wide() => Findings.AreNone(await walk.FoundAsync("narrow"));

    [Fact]
    public async Task Nothing_is_lost_when_the_text_is_spread_out() => Findings.AreNone(await walk.FoundAsync("spacing"));

    [Fact]
    public async Task Nothing_is_lost_at_twice_the_size() => Findings.AreNone(await walk.FoundAsync("zoom"));

    [Fact]
    public async Task The_keyboard_reaches_everything_and_shows_where_it_is() => Findings.AreNone(await walk.FoundAsync("focus"));

    [Fact]
    public async Task Dark_colours_can_be_told_apart() => Findings.AreNone(await walk.FoundAsync("dark"));

    [Fact]
    public async Task What_is_printed_can_be_read_without_colour() => Findings.AreNone(await walk.FoundAsync("grey"));

    [Fact]
    public async Task Nothing_stands_off_a_printed_sheet() => Findings.AreNone(await walk.FoundAsync("print"));

    [Fact]
    public async Task Words_in_drawings_stay_inside_and_apart() => Findings.AreNone(await walk.FoundAsync("drawing"));

    [Fact]
    public async Task No_page_speaks_in_the_console_or_asks_a_network() => Findings.AreNone(await walk.FoundAsync("noise"));
}
