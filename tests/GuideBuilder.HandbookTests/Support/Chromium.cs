using GuideBuilder.HandbookTests.Support;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Chromium))]

namespace GuideBuilder.HandbookTests.Support;

/// <summary>The installed Chromium, started once, when the first test asks for a page. No browser is downloaded; where none is installed the tests that ask for a page are skipped.</summary>
public sealed class Chromium : IAsyncDisposable
{
    private static readonly string[] Programs = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    // A handbook opens from disk: whatever the browser would ask of a network is switched off. No sandbox, because root has none.
    private static readonly string[] Arguments =
    [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];

    private readonly Lazy<Task<Started?>> _started = new(StartAsync);

    /// <summary>A new page in a browsing context of its own, with script on unless told otherwise.</summary>
    public async Task<IPage> NewPageAsync(bool script = true)
    {
        var started = await _started.Value;
        Assert.SkipWhen(started is null, "no Chromium is installed");
        var context = await started!.Browser.NewContextAsync(new() { Offline = true, JavaScriptEnabled = script });
        return await context.NewPageAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (_started.IsValueCreated && await _started.Value is { } started)
        {
            await started.Browser.DisposeAsync();
            started.Driver.Dispose();
        }
    }

    private static async Task<Started?> StartAsync()
    {
        var program = Array.Find(Programs, File.Exists);
        if (program is null)
        {
            return null;
        }

        var driver = await Playwright.CreateAsync();
        var browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = program, Args = Arguments });
        return new(driver, browser);
    }

    private sealed record Started(IPlaywright Driver, IBrowser Browser);
}
