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
}
