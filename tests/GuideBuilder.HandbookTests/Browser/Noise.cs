using Microsoft.Playwright;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>What a page must not do: write to the console, fail, or ask for anything that is not a file of its own.</summary>
internal static class Noise
{
    /// <summary>Tells every message, error, request of a network and request that failed.</summary>
    public static void Hear(IPage page, Action<string> tell)
    {
        page.Console += (_, message) => tell($"console: {message.Text}");
        page.PageError += (_, error) => tell($"error: {error}");
        page.RequestFailed += (_, request) => tell($"failed: {request.Url}");
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith("file://", StringComparison.Ordinal))
            {
                tell($"request: {request.Url}");
            }
        };
    }
}
