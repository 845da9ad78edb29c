using System.Collections.Concurrent;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>Every page of the first home, and of each other home one page of each kind, opened once each for all checks, in as many windows as there are processors; the tests read what was found. Colours in the dark and on paper are checked on every chapter and, of pages made alike, on as many as tests/sizes says.</summary>
public sealed class PageWalk(Handbooks handbooks, Chromium chromium)
{
    private const int SheetWidth = 642;

    private readonly ConcurrentDictionary<string, ConcurrentBag<string>> _found = new(StringComparer.Ordinal);

    private readonly Lock _turn = new();

    private Task? _walk;

    /// <summary>What was found of one kind, a line each with home and page, in their order; waits for the walk.</summary>
    public async Task<IReadOnlyList<string>> FoundAsync(string kind)
    {
        Task walk;
        lock (_turn)
        {
            walk = _walk ??= WalkAsync();
        }

        await walk;
        return _found.TryGetValue(kind, out var lines) ? [.. lines.Order(StringComparer.Ordinal)] : [];
    }

    private async Task WalkAsync()
    {
        var waiting = new ConcurrentQueue<Visit>(Handbooks.Homes.SelectMany(Visits));
        await Task.WhenAll(Enumerable.Range(0, Environment.ProcessorCount).Select(_ => WalkAsync(waiting)));
    }

    private IEnumerable<Visit> Visits(string home)
    {
        var closely = handbooks.OfEachKind(home, Sizes.Of("pages-of-a-kind")).ToHashSet(StringComparer.Ordinal);
        var pages = home == Handbooks.Homes[0] ? handbooks.PagesOf(home) : handbooks.OfEachKind(home, 1);
        return pages.Select(name => new Visit(home, name, closely.Contains(name)));
    }

    private async Task WalkAsync(ConcurrentQueue<Visit> waiting)
    {
        var page = await chromium.NewPageAsync();
        var where = "";
        Noise.Hear(page, said => Add("noise", where, [said]));
        while (waiting.TryDequeue(out var next))
        {
            where = $"{next.Home}/{next.Name}";
            await page.GotoAsync("file://" + Path.Combine(handbooks.Of(next.Home), next.Name));
            await VisitAsync(page, where, next);
        }

        await page.Context.CloseAsync();
    }

    private async Task VisitAsync(IPage page, string where, Visit visit)
    {
        await DressAsync(page, Media.Screen, ColorScheme.Light, 1280, 900);
        await ScriptAsync(page, where, "focus", PageScripts.Unfocused);
        await ScriptAsync(page, where, "drawing", PageScripts.Drawn);
        if (!Handbooks.IsWholeBook(visit.Name))
        {
            Add("axe", where, await Axe.FindAsync(page));
        }

        if (visit.Closely)
        {
            await DressAsync(page, Media.Screen, ColorScheme.Dark, 1280, 900);
            Add("dark", where, await Axe.ContrastAsync(page));
        }

        await DressAsync(page, Media.Print, ColorScheme.Light, SheetWidth, 900);
        await ScriptAsync(page, where, "print", PageScripts.OffTheSheet);
        if (visit.Closely)
        {
            Add("grey", where, await Axe.ContrastAsync(page));
        }

        await DressAsync(page, Media.Screen, ColorScheme.Light, 640, 450);
        await ScriptAsync(page, where, "zoom", PageScripts.Lost);
        await page.SetViewportSizeAsync(320, 640);
        await ScriptAsync(page, where, "narrow", PageScripts.Lost);
        await page.EvaluateAsync(PageScripts.SpreadText);
        await ScriptAsync(page, where, "spacing", PageScripts.Lost);
    }

    private static async Task DressAsync(IPage page, Media media, ColorScheme scheme, int width, int height)
    {
        await page.EmulateMediaAsync(new() { Media = media, ColorScheme = scheme });
        await page.SetViewportSizeAsync(width, height);
    }

    private async Task ScriptAsync(IPage page, string where, string kind, string script) => Add(kind, where, await page.EvaluateAsync<string[]>(script));

    private void Add(string kind, string where, IEnumerable<string> lines)
    {
        var all = _found.GetOrAdd(kind, _ => []);
        foreach (var line in lines)
        {
            all.Add($"{where}: {line}");
        }
    }

    private sealed record Visit(string Home, string Name, bool Closely);
}
