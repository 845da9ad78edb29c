using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>Every page of the first home, and of each other home one page of each kind, opened once each; the tests read what was found. The slow checker of accessibility sees every chapter and, of pages that one part of the program makes alike, as many as tests/sizes says.</summary>
public sealed class PageWalk(Handbooks handbooks, Chromium chromium)
{
    private readonly Dictionary<string, List<string>> _found = new(StringComparer.Ordinal);

    private Task? _walk;

    /// <summary>What was found of one kind, a line each with home and page; waits for the walk.</summary>
    public async Task<IReadOnlyList<string>> FoundAsync(string kind)
    {
        await (_walk ??= WalkAsync());
        return _found.TryGetValue(kind, out var lines) ? lines : [];
    }

    private async Task WalkAsync()
    {
        var page = await chromium.NewPageAsync();
        foreach (var home in Handbooks.Homes)
        {
            var closely = handbooks.OfEachKind(home, Sizes.Of("pages-of-a-kind")).ToHashSet(StringComparer.Ordinal);
            foreach (var name in home == Handbooks.Homes[0] ? handbooks.PagesOf(home) : handbooks.OfEachKind(home, 1))
            {
                await VisitAsync(page, home, name, closely.Contains(name));
            }
        }

        await page.Context.CloseAsync();
    }

    private async Task VisitAsync(IPage page, string home, string name, bool closely)
    {
        var where = $"{home}/{name}";
        await page.SetViewportSizeAsync(1280, 900);
        await page.GotoAsync("file://" + Path.Combine(handbooks.Of(home), name));
        await ScriptAsync(page, where, "focus", PageScripts.Unfocused);
        if (closely)
        {
            Add("axe", where, await Axe.FindAsync(page));
        }

        await page.SetViewportSizeAsync(640, 450);
        await ScriptAsync(page, where, "zoom", PageScripts.Lost);
        await page.SetViewportSizeAsync(320, 640);
        await ScriptAsync(page, where, "narrow", PageScripts.Lost);
        await page.EvaluateAsync(PageScripts.SpreadText);
        await ScriptAsync(page, where, "spacing", PageScripts.Lost);
    }

    private async Task ScriptAsync(IPage page, string where, string kind, string script) => Add(kind, where, await page.EvaluateAsync<string[]>(script));

    private void Add(string kind, string where, IEnumerable<string> lines)
    {
        if (!_found.TryGetValue(kind, out var all))
        {
            _found[kind] = all = [];
        }

        all.AddRange(lines.Select(line => $"{where}: {line}"));
    }
}
