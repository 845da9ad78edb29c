using System.Collections.Concurrent;
using GuideBuilder.HandbookTests.Browser;
using GuideBuilder.HandbookTests.Support;
using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>A page of the browser, with script on, of which every stir is heard: dialogs, requests, windows, frames, messages, reports of the content policy, and the mark that an attack which works would leave.</summary>
internal static class Watched
{
    private const string Listen = "window.reports = []; addEventListener('securitypolicyviolation', e => window.reports.push(e.violatedDirective + ' ' + e.blockedURI));";

    private const string Marks = """
        () => [
          ...window.reports.map(r => 'policy: ' + r),
          ...typeof window.caught === 'undefined' ? [] : ['caught: ' + window.caught],
          ...window.frames.length === 0 ? [] : ['frames: ' + window.frames.length],
          ...document.querySelector('main') ? [] : ['no text'],
        ]
        """;

    /// <summary>A new page that tells all that it hears.</summary>
    public static async Task<IPage> PageAsync(Chromium chromium, ConcurrentBag<string> found)
    {
        var page = await chromium.NewPageAsync();
        await page.Context.AddInitScriptAsync(Listen);
        Noise.Hear(page, said => found.Add($"{page.Url}: {said}"));
        page.Dialog += async (_, dialog) =>
        {
            found.Add($"{page.Url}: dialog {dialog.Message}");
            await dialog.DismissAsync();
        };
        page.Popup += (_, other) => found.Add($"{page.Url}: window {other.Url}");
        return page;
    }

    /// <summary>Opens a file, and asks what came of it.</summary>
    public static async Task OpenAsync(IPage page, string path, ConcurrentBag<string> found)
    {
        await page.GotoAsync("file://" + path);
        foreach (var mark in await page.EvaluateAsync<string[]>(Marks))
        {
            found.Add($"{path}: {mark}");
        }

        if (page.Url != "file://" + path)
        {
            found.Add($"{path}: went on to {page.Url}");
        }
    }
}
