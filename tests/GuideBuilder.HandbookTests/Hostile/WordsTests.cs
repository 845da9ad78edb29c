using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

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
        foreach (var (attempt, number) in Attempts.Select((a, n) => (a, n)))
        {
            var quoted = "'" + attempt.Replace("'", "''", StringComparison.Ordinal) + "'";
            var answers = folder.Put($"home-{number}.yaml", $"handbook: {{format: 1}}\nhome: {{nation: england, address: {quoted}}}\npeople: {{name: {quoted}}}\nwish: {{moves: [cutout, meter], detail: {quoted}}}\n");
            var book = folder.At($"book-{number}");
            var bound = await Handbooks.BindAsync(answers, book);
            Assert.Equal((0, ""), (bound.Exit, bound.Errors));

            var shown = 0;
            foreach (var file in Directory.EnumerateFiles(book, "*.html").Order(StringComparer.Ordinal))
            {
                await page.GotoAsync("file://" + file);
                var text = await page.Locator("body").TextContentAsync() ?? "";
                shown += text.Contains(attempt, StringComparison.Ordinal) ? 1 : 0;
                Assert.DoesNotContain("caught", await page.TitleAsync(), StringComparison.Ordinal);
                Assert.Equal(0, await page.Locator("main script, main img, main b").CountAsync());
            }

            Assert.True(shown > 0, $"{attempt} is shown nowhere");
        }

        await page.Context.CloseAsync();
        Findings.AreNone(heard);
    }
}
