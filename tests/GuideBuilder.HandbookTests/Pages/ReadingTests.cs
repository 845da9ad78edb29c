using AngleSharp.Dom;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>What a tired reader must not be left to work out: a dark house that is live, a line with no room to write on, a reason that is not theirs.</summary>
public sealed class ReadingTests(Handbooks handbooks)
{
    private const string Live = "live as far as the isolator";

    public static TheoryData<string> Homes => [.. Handbooks.Homes];

    [Theory]
    [MemberData(nameof(Homes))]
    public void From_the_turn_that_puts_supply_on_no_row_of_the_day_says_off(string home)
    {
        foreach (var sheet in new[] { "the-day.html", "door-sheet.html", "short-edition.html" })
        {
            var rows = Rows(home, sheet).Where(r => r.TextContent.StartsWith("Turn", StringComparison.Ordinal)).Select(r => r.TextContent).ToList();
            var from = rows.FindIndex(r => r.Contains("puts supply on", StringComparison.Ordinal));
            Assert.InRange(from, 1, rows.Count - 2);
            Assert.All(rows.Skip(from), r => Assert.Contains(Live, r, StringComparison.Ordinal));
            Assert.Contains(rows.Take(from), r => r.EndsWith("off in the house", StringComparison.Ordinal) || r.Contains("off in the house", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Homes))]
    public void Beside_the_arrival_of_each_crew_stands_what_to_do_if_it_does_not_come(string home)
    {
        var page = handbooks.Parsed(home, "the-day.html");
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var told = 0;
        foreach (var row in Rows(home, "the-day.html").Where(r => r.TextContent.StartsWith("Turn", StringComparison.Ordinal)))
        {
            var said = row.QuerySelectorAll("td").Single(c => c.GetAttribute("data-head") == "If they do not come");
            if (!seen.Add(row.QuerySelectorAll("td")[0].TextContent))
            {
                Assert.Equal("", said.TextContent);
                continue;
            }

            if (said.QuerySelector("a") is { } link)
            {
                told++;
                Assert.NotNull(page.GetElementById(link.GetAttribute("href")!.TrimStart('#')));
            }
        }

        Assert.True(told >= 2, $"{home}: {told} of {seen.Count} crews");
    }

    [Fact]
    public void A_gap_is_an_empty_line_and_says_once_what_belongs_there() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in handbooks.PagesOf(home).Where(p => !Handbooks.IsWholeBook(p))
        from gap in handbooks.Parsed(home, name).QuerySelectorAll(".gap")
        where gap.TextContent.Length > 0 || gap.NextElementSibling is not { ClassName: "gap-name" or "unseen", TextContent.Length: > 2 }
        select $"{home}/{name}: {gap.ParentElement!.TextContent}");

    [Fact]
    public void The_sheets_to_fill_in_have_gaps() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in new[] { "door-sheet.html", "short-edition.html" }
        where handbooks.Parsed(home, name).QuerySelectorAll("td .gap").Length < 3
        select $"{home}/{name}");

    [Fact]
    public void What_is_settled_gives_no_reason_that_is_not_known() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in handbooks.PagesOf(home).Where(p => !Handbooks.IsWholeBook(p))
        from side in handbooks.Parsed(home, name).QuerySelectorAll(".side")
        let said = side.TextContent
        where said.Contains("settled by your answers", StringComparison.Ordinal) && said.Contains("or that is not known", StringComparison.Ordinal)
        select $"{home}/{name}: {said}");

    [Fact]
    public void The_signal_word_is_heard_with_the_heading_of_its_panel() => Findings.AreNone(
        from home in Handbooks.Homes
        from name in handbooks.PagesOf(home)
        from panel in handbooks.Parsed(home, name).QuerySelectorAll(".panel")
        let head = panel.QuerySelector(":is(h2, h3, h4, h5, h6)")?.TextContent ?? ""
        where !head.StartsWith("DANGER", StringComparison.OrdinalIgnoreCase) && !head.StartsWith("WARNING", StringComparison.OrdinalIgnoreCase)
            && !head.StartsWith("CAUTION", StringComparison.OrdinalIgnoreCase) && !head.StartsWith("NOTICE", StringComparison.OrdinalIgnoreCase)
        select $"{home}/{name}: {panel.TextContent}");

    private IEnumerable<IElement> Rows(string home, string name) => handbooks.Parsed(home, name).QuerySelectorAll("tbody tr");
}
