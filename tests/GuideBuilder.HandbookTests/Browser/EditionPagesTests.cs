using System.Text.Json;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Browser;

/// <summary>The pages that only the other editions and the catalogue have, looked at in the real browser and by the Nu checker of HTML.</summary>
public sealed class EditionPagesTests(Chromium chromium) : IDisposable
{
    private static readonly string Checker = Repository.At("artifacts/npm/node_modules/vnu-jar/build/dist/vnu.jar");

    private readonly Folder _folder = new();

    [Fact]
    public async Task What_only_other_editions_have_is_accessible_and_right_HTML()
    {
        string[] pages = [.. await OwnPagesAsync()];
        var found = new List<string>();
        var page = await chromium.NewPageAsync();
        foreach (var path in pages)
        {
            await page.GotoAsync("file://" + path);
            found.AddRange((await Axe.FindAsync(page)).Select(f => $"{path}: {f}"));
            await page.SetViewportSizeAsync(320, 640);
            found.AddRange((await page.EvaluateAsync<string[]>(PageScripts.Lost)).Select(f => $"{path}: {f}"));
            await page.SetViewportSizeAsync(1280, 900);
        }

        await page.Context.CloseAsync();
        Findings.AreNone(found);
        Findings.AreNone(await NuAsync(pages));
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private async Task<IEnumerable<string>> OwnPagesAsync()
    {
        var home = Repository.At("answers/avebury-close.yaml");
        await BoundAsync(home, "customer", "--imprint", Repository.At("answers/imprint/rushlight.yaml"));
        await BoundAsync(home, "neighbour", "--edition", "neighbour");
        _folder.Put("homes/one.yaml", "handbook: {format: 1, id: one, public-id: plan-one}\nhome: {nation: england, kind: semi, address: 1 Elm Row}\nwish: {moves: [cutout, meter]}\n");
        await BoundAsync(_folder.At("homes"), "private");
        await BoundAsync(_folder.At("homes"), "public", "--edition", "public");
        return
        [
            .. new[] { "index", "scope", "crew-sheet", "handover-sheet", "terms" }.Select(p => _folder.At("customer", p + ".html")),
            _folder.At("neighbour", "index.html"), _folder.At("neighbour", "letter-neighbour-sheet.html"),
            _folder.At("private", "index.html"), _folder.At("public", "index.html"), _folder.At("public", "plan-one", "index.html"), _folder.At("public", "plan-one", "the-sequence.html"),
        ];
    }

    private async Task BoundAsync(string what, string to, params string[] more)
    {
        var run = await Tool.GuideBuilderAsync(["bind", what, "--to", _folder.At(to), "--today", Handbooks.Today, .. more]);
        Assert.True(run.Exit == 0, run.Errors);
    }

    private static async Task<IEnumerable<string>> NuAsync(string[] pages)
    {
        if (!File.Exists(Checker) || !File.Exists("/usr/bin/java"))
        {
            return [];
        }

        var run = await Tool.RunAsync("/usr/bin/java", ["-jar", Checker, "--format", "json", "--errors-only", .. pages]);
        using var said = JsonDocument.Parse(run.Errors);
        return [.. said.RootElement.GetProperty("messages").EnumerateArray().Where(m => m.GetProperty("type").GetString() != "info").Select(m => $"{m.GetProperty("url").GetString()}:{m.GetProperty("lastLine").GetInt32()}: {m.GetProperty("message").GetString()}")];
    }
}
