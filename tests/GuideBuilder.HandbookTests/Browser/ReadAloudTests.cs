using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What a screen reader is given of three pages, in its order: kinds, names and words as the browser tells them.</summary>
public sealed class ReadAloudTests(Handbooks handbooks, Chromium chromium)
{
    [Theory]
    [InlineData("index.html", "cover")]
    [InlineData("the-day.html", "the-day")]
    [InlineData("dig-joint-hole.html", "a-duty")]
    public async Task A_page_is_read_aloud_as_written_down(string name, string golden)
    {
        var page = await chromium.NewPageAsync();
        await page.GotoAsync("file://" + Path.Combine(handbooks.Of(Handbooks.Homes[0]), name));
        var heard = await page.Locator("body").AriaSnapshotAsync();
        await page.Context.CloseAsync();

        Golden.Matches($"ReadAloud/{golden}.txt", heard.ReplaceLineEndings("\n") + "\n");
    }

    [Fact]
    public void The_lines_of_the_left_column_are_no_landmarks_and_begin_with_their_kind() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in handbooks.PagesOf(home)
        from side in handbooks.Parsed(home, name).QuerySelectorAll(".side")
        let wrong = side.LocalName is "aside" or "nav" or "section" || side.HasAttribute("role") ? "is a landmark"
            : side.QuerySelectorAll("p").Any(p => p.FirstElementChild is not { LocalName: "b" } kind || !kind.TextContent.TrimEnd().EndsWith(':') || !p.TextContent.TrimStart().StartsWith(kind.TextContent, StringComparison.Ordinal)) ? "begins with no kind"
            : side.PreviousElementSibling is null ? "comes before its text"
            : null
        where wrong is not null
        select $"{home}/{name}: {wrong}: {side.TextContent.Trim()}");

    [Fact]
    public void The_name_of_every_box_to_tick_is_its_whole_task() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in handbooks.PagesOf(home)
        let page = handbooks.Parsed(home, name)
        from box in page.QuerySelectorAll("input[type=checkbox]")
        let label = page.QuerySelector($"label[for='{box.Id}']")
        where label is null || label.TextContent.Trim() != box.ParentElement!.TextContent.Trim()
        select $"{home}/{name}: {box.Id}");
}
