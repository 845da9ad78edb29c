using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Wording;
using GuideBuilder.Tests.Rendering;
using static System.FormattableString;

namespace GuideBuilder.Tests.Hostile;

/// <summary>What must agree between the pages of a bound handbook, its data and its plan.</summary>
internal sealed class BookSums
{
    private readonly BoundBook _book;
    private readonly Plan _plan;
    private readonly Dictionary<string, IHtmlDocument> _pages;
    private readonly JsonElement _data;

    private BookSums(BoundBook book, Plan plan)
    {
        var parser = new HtmlParser();
        (_book, _plan) = (book, plan);
        _pages = book.Files.Where(f => f.Name.EndsWith(".html", StringComparison.Ordinal)).ToDictionary(f => f.Name, f => parser.ParseDocument(book.File(f.Name)), StringComparer.Ordinal);
        _data = JsonDocument.Parse(book.File("plan.json")).RootElement;
    }

    /// <summary>What does not agree, a line each.</summary>
    public static IEnumerable<string> Wrong(BoundBook book, Plan plan)
    {
        var sums = new BookSums(book, plan);
        return [.. sums.Links(), .. sums.Hazards(), .. sums.Money(), .. sums.OffSupply(), .. sums.Dates()];
    }

    private IEnumerable<string> Links() =>
        from page in _pages
        let ids = page.Value.QuerySelectorAll("[id]").Select(e => e.Id!).ToHashSet(StringComparer.Ordinal)
        from link in page.Value.QuerySelectorAll("a[href]")
        let parts = link.GetAttribute("href")!.Split('#')
        where !parts[0].Contains(':', StringComparison.Ordinal)
        let there = parts[0].Length == 0 ? page.Value : _pages.GetValueOrDefault(parts[0])
        where there is null ? _book.Files.All(f => f.Name != parts[0]) : parts.Length > 1 && there.GetElementById(parts[1]) is null
        select $"{page.Key}: {link.GetAttribute("href")} leads nowhere";

    private IEnumerable<string> Hazards() =>
        from hazard in _plan.Hazards
        let item = hazard.Hazard.Item
        where hazard.Hazard.IsPresent && item.Before.Severity == 5
        let page = _pages.GetValueOrDefault(item.Id + ".html")?.Body?.TextContent ?? ""
        where !page.Contains(item.Word.ToString().ToUpperInvariant(), StringComparison.Ordinal) || !page.Contains("Stop when:", StringComparison.Ordinal)
        select $"{item.Id}.html lacks its signal word or when to stop";

    // The rows of the table of costs, as a reader adds them up.
    private IEnumerable<string> Money()
    {
        var lines = _data.GetProperty("costs").EnumerateArray().Where(c => c.GetProperty("added").GetBoolean() && c.GetProperty("state").GetString() != "ruled-out").ToList();
        var sum = _pages["money.html"].QuerySelector("tr.sum");
        if (sum is null)
        {
            return lines.Count == 0 || _plan.IsBeyond ? [] : ["money.html has no sum"];
        }

        var rows = sum.ParentElement!.QuerySelectorAll("tr:not(.sum)").ToList();
        var wrong = Enumerable.Range(1, 3).Where(i => rows.Sum(r => Figure(r, i)) != Figure(sum, i)).Select(i => Invariant($"money.html: column {i} does not add up"));
        var apart = lines.Where(l => rows.SingleOrDefault(r => r.Id == l.GetProperty("id").GetString()) is not { } row || Figure(row, 3) != l.GetProperty("gross").GetProperty("likely").GetDecimal())
            .Select(l => $"money.html differs from plan.json on {l.GetProperty("id")}");
        return [.. wrong, .. rows.Count == lines.Count ? [] : new[] { "money.html and plan.json have not as many lines" }, .. apart];
    }

    private IEnumerable<string> OffSupply()
    {
        var hours = _data.GetProperty("off-supply-hours");
        var (low, high) = (hours.GetProperty("low").GetDecimal(), hours.GetProperty("high").GetDecimal());
        if (!Says("index.html", Figures.Hours(low), Figures.Hours(high)))
        {
            yield return Invariant($"the cover does not say {low} to {high} hours");
        }

        if (!Says("off-supply.html", Figures.Hours(low), Figures.Hours(high)))
        {
            yield return Invariant($"off-supply.html does not say {low} to {high} hours");
        }
    }

    private IEnumerable<string> Dates() =>
        from step in _data.GetProperty("steps").EnumerateArray()
        where step.TryGetProperty("start", out _) && !step.GetProperty("done").GetBoolean()
        let file = step.GetProperty("id").GetString() + ".html"
        let days = _pages[file].QuerySelectorAll("time").Select(t => t.GetAttribute("datetime")).ToList()
        where _plan.Schedule.Meetings.All(m => !m.IsHeld) && !days.Contains(step.GetProperty("start").GetString())
        select $"{file} does not say that it begins on {step.GetProperty("start")}";

    private bool Says(string page, string low, string high)
    {
        var words = _pages[page].Body!.TextContent;
        return low == high ? words.Contains($"{low} hour", StringComparison.Ordinal) : words.Contains($"from {low} to {high} hour", StringComparison.Ordinal);
    }

    private static decimal Figure(IElement row, int column) =>
        decimal.Parse(row.QuerySelectorAll("td")[column].TextContent.TrimStart('£', '€'), System.Globalization.NumberStyles.Currency, System.Globalization.CultureInfo.InvariantCulture);
}
