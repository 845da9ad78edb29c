using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;
using static System.FormattableString;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>What a person writes arrives as text, whatever it looks like.</summary>
public sealed class WordsTests(Chromium chromium)
{
    private static readonly string[] Attempts =
    [
        "<script>document.title='caught'</script>",
        "{{ 1 + 1 }} {% x %} {{ answer \"people.name\" }}",
        "[click](javascript:alert(1)) ![x](http://example.invalid/x.png)",
        "\"><img src=x onerror=document.title='caught'>",
        "# not a heading\\n* nor a list & <b>bold</b> &lt;",
    ];

    [Fact]
    public async Task Script_markup_and_templates_in_answers_are_shown_as_they_were_written()
    {
        using var folder = new Folder();
        var page = await chromium.NewPageAsync();
        var heard = new List<string>();
        page.Console += (_, message) => heard.Add(message.Text);
        page.Dialog += (_, dialog) => heard.Add(dialog.Message);
        page.Request += (_, request) => { if (!request.Url.StartsWith("file://", StringComparison.Ordinal)) { heard.Add(request.Url); } };
        var plain = await BindAsync(folder, "plain", "some plain words");
        foreach (var (attempt, number) in Attempts.Select((a, n) => (a, n)))
        {
            var book = await BindAsync(folder, Invariant($"attempt-{number}"), attempt);
            var shown = 0;
            foreach (var file in Directory.EnumerateFiles(book, "*.html").Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal))
            {
                await page.GotoAsync("file://" + Path.Combine(book, file));
                shown += (await page.Locator("body").TextContentAsync() ?? "").Contains(attempt, StringComparison.Ordinal) ? 1 : 0;
                Assert.Equal(Structure(plain, file), Structure(book, file));
            }

            Assert.True(shown > 0, $"{attempt} is shown nowhere");
        }

        await page.Context.CloseAsync();
        Findings.AreNone(heard);
    }

    private static async Task<string> BindAsync(Folder folder, string name, string words)
    {
        var quoted = "'" + words.Replace("'", "''", StringComparison.Ordinal) + "'";
        var answers = folder.Put(name + ".yaml", $"handbook: {{format: 1, id: hostile}}\nhome: {{nation: england, address: {quoted}}}\npeople: {{name: {quoted}}}\nwish: {{moves: [cutout, meter], detail: {quoted}}}\n");
        var bound = await Handbooks.BindAsync(answers, folder.At(name));
        Assert.Equal((0, ""), (bound.Exit, bound.Errors));
        return folder.At(name);
    }

    // Every element in order with the names of its attributes: what a page is made of, whatever its words.
    private static string Structure(string book, string file) =>
        string.Join(' ', new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(book, file))).All
            .Select(e => e.LocalName + string.Concat(e.Attributes.Select(a => "." + a.Name).Order(StringComparer.Ordinal))));
}
