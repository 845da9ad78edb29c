using System.Collections.Concurrent;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>What a person writes arrives as text, whatever it looks like, and a browser does nothing with it.</summary>
public sealed class WordsTests(Chromium chromium) : IDisposable
{
    private readonly Folder _folder = new();

    [Fact]
    public async Task Hostile_words_in_any_answer_are_shown_as_they_were_written_and_do_nothing()
    {
        var books = Sizes.Of("hostile-books");
        var answers = Enumerable.Range(-1, books + 1).Select(b => _folder.Put(Planted.IdOf(b) + ".yaml", Planted.Text(b, books))).ToArray();
        var bound = await Tool.GuideBuilderAsync(["bind", .. answers, "--to", _folder.At("books"), "--today", Handbooks.Today]);
        Assert.Equal((0, ""), (bound.Exit, bound.Errors));

        var found = new ConcurrentBag<string>();
        var pages = Enumerable.Range(0, books).SelectMany(b => Read(b, books, found)).ToArray();
        await OpenAsync(pages, found);

        Assert.True(pages.Length >= books, "nothing was planted");
        Findings.AreNone(found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Hostile_words_in_an_imprint_do_nothing_and_its_lines_are_shown_as_they_were_written()
    {
        var words = HostileWords.All.Where(w => !w.Contains("{{", StringComparison.Ordinal)).Select(HostileWords.InOneLine).ToArray();
        var imprint = _folder.Put("imprint.yaml", Planted.Imprint(words));
        var bound = await Tool.GuideBuilderAsync("bind", _folder.Put("home.yaml", Planted.Text(-1, 1)), "--edition", "customer", "--imprint", imprint, "--to", _folder.At("book"), "--today", Handbooks.Today);
        Assert.Equal((0, ""), (bound.Exit, bound.Errors));

        var found = new ConcurrentBag<string>();
        var pages = Directory.EnumerateFiles(_folder.At("book"), "*.html").Where(p => File.ReadAllText(p).Contains("caught", StringComparison.Ordinal)).ToArray();
        var seen = HostileWords.Seen(string.Join(' ', pages.Select(p => new HtmlParser().ParseDocument(File.ReadAllText(p)).Body!.TextContent)));
        await OpenAsync(pages, found);

        Findings.AreNone(found.Concat(words.Select(HostileWords.Seen).Where(w => !seen.Contains(w, StringComparison.Ordinal)).Select(w => $"shown nowhere: {w}")));
    }

    // The pages that differ from those of plain words; they are made of the same elements, and all words are seen.
    private List<string> Read(int book, int books, ConcurrentBag<string> found)
    {
        var parser = new HtmlParser();
        var (pages, seen) = (new List<string>(), new List<string>());
        foreach (var path in Directory.EnumerateFiles(_folder.At("books", Planted.IdOf(book)), "*.html").Where(p => book == 0 || !Handbooks.IsWholeBook(Path.GetFileName(p))).Order(StringComparer.Ordinal))
        {
            var (text, plain) = (File.ReadAllText(path), File.ReadAllText(_folder.At("books", Planted.IdOf(-1), Path.GetFileName(path))));
            if (text.Replace(Planted.IdOf(book), Planted.IdOf(-1), StringComparison.Ordinal) != plain)
            {
                var page = parser.ParseDocument(text);
                pages.Add(path);
                seen.Add(HostileWords.Seen(page.Body!.TextContent));
                Compare(path, Structure(page), Structure(parser.ParseDocument(plain)), found);
            }
        }

        foreach (var words in Planted.Printed(book, books).Where(w => !seen.Any(s => s.Contains(w, StringComparison.Ordinal))))
        {
            found.Add($"{Planted.IdOf(book)} shows nowhere: {words}");
        }

        return pages;
    }

    private static void Compare(string path, string[] structure, string[] plain, ConcurrentBag<string> found)
    {
        var at = structure.Zip(plain).TakeWhile(p => p.First == p.Second).Count();
        if (at < structure.Length || at < plain.Length)
        {
            found.Add($"{path}: {structure.ElementAtOrDefault(at)} where {plain.ElementAtOrDefault(at)} was, after {structure.ElementAtOrDefault(at - 1)}");
        }
    }

    private async Task OpenAsync(string[] pages, ConcurrentBag<string> found)
    {
        var waiting = new ConcurrentQueue<string>(pages);
        await Task.WhenAll(Enumerable.Range(0, Environment.ProcessorCount).Select(async _ =>
        {
            var page = await Watched.PageAsync(chromium, found);
            while (waiting.TryDequeue(out var path))
            {
                await Watched.OpenAsync(page, path, found);
            }

            await page.Context.CloseAsync();
        }));
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    // Every element in order with its attributes, those values left out that are words: what a page is made of.
    private static string[] Structure(IHtmlDocument page) =>
        [.. page.All.Select(e => e.LocalName + string.Concat(e.Attributes.Select(a => $" {a.Name}{(a.Name is "id" or "href" or "class" or "src" ? "=" + a.Value : "")}").Order(StringComparer.Ordinal)))];
}
