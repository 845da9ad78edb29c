using GuideBuilder.Cli;
using GuideBuilder.Cli.Printing;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Rendering.Form;
using GuideBuilder.Rendering.Questionnaire;
using Microsoft.Playwright;
using NodaTime;

[assembly: AssemblyFixture(typeof(GuideBuilder.HandbookTests.Support.Questionnaire))]

namespace GuideBuilder.HandbookTests.Support;

/// <summary>The page of the questionnaire, written once for all tests, and what the program makes of answers files.</summary>
public sealed class Questionnaire : IDisposable
{
    private readonly Folder _folder = new();

    public Questionnaire() => File.WriteAllBytes(Path, FormPage.Render(Guidance).Value!.Bytes.Span);

    /// <summary>Where the page stands.</summary>
    public string Path => _folder.At("questionnaire.html");

    /// <summary>The guidance that travels inside the program.</summary>
    internal static Guidance Guidance { get; } = Guide.Guidance(null, new LocalDate(2026, 11, 24)).Value!;

    /// <summary>Opens the page, and notes every word in the console, every error and every request but for the page itself.</summary>
    internal async Task<(IPage Page, List<string> Heard)> OpenAsync(Chromium chromium, int width = 390, int height = 844)
    {
        var page = await chromium.NewPageAsync();
        var heard = new List<string>();
        page.Console += (_, message) => heard.Add($"console: {message.Text}");
        page.PageError += (_, error) => heard.Add($"error: {error}");
        page.Request += (_, request) => { if (request.Url != "file://" + Path) { heard.Add($"request: {request.Url}"); } };
        await page.SetViewportSizeAsync(width, height);
        await page.GotoAsync("file://" + Path);
        return (page, heard);
    }

    /// <summary>An answers file in the plain layout.</summary>
    internal static string Plain(WrittenAnswers answers) => System.Text.Encoding.UTF8.GetString(PlainLayout.Write(answers, Guidance, "home.yaml").Value!.Bytes.Span);

    /// <summary>An answers file of the repository in the plain layout.</summary>
    internal static string Plain(string path) =>
        Plain(AnswerReader.ReadWritten(new(path, File.ReadAllBytes(GuideBuilder.Tests.Support.Repository.At(path))), Guidance).Value!);

    /// <summary>What an answers file says: the answer to every question, papers and log.</summary>
    internal static string[] Meaning(string text)
    {
        var answers = AnswerReader.Read(new("home.yaml", System.Text.Encoding.UTF8.GetBytes(text)), Guidance).Value!;
        return
        [
            $"{answers.Handbook with { Imprint = null }}",
            .. Guidance.Questions.Select(q => answers[q.Name]).Select(a => $"{a.Name} {a.Standing} {(a.Value is null ? "" : ValueText.Of(a.Value))}"),
            .. answers.Papers.Select(p => $"{p with { Place = Place.None, Covers = [], LeavesOut = [] }}"),
            .. answers.Log.Select(e => $"{e with { Place = Place.None }}"),
        ];
    }

    /// <summary>Loads a file into the page.</summary>
    internal static async Task LoadAsync(IPage page, string text)
    {
        await page.Locator("#file").SetInputFilesAsync(new FilePayload { Name = "home.yaml", MimeType = "text/yaml", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
        await page.WaitForFunctionAsync("() => document.getElementById('file').value === ''");
    }

    /// <summary>Presses the button that makes the file, and gives its text.</summary>
    internal static async Task<string> DownloadAsync(IPage page, Func<Task>? press = null)
    {
        var made = await page.RunAndWaitForDownloadAsync(press ?? (async () =>
        {
            await page.Locator("#download").ClickAsync();
            Assert.Contains("is made", await page.Locator("#told").TextContentAsync(), StringComparison.Ordinal);
        }));
        return await File.ReadAllTextAsync(await made.PathAsync());
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
