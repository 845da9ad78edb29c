using System.Collections.Concurrent;
using System.Text;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Shell;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>Names of files and folders that try to be more than names: they are read and written as they are, and neither console nor page does anything with them.</summary>
public sealed class FileNameTests(Chromium chromium) : IDisposable
{
    private const int LongestInBytes = 200;

    private readonly Folder _folder = new();

    // All hostile words that a disk can hold, as few names as they fit into.
    private static List<string> Names()
    {
        var names = new List<string> { "" };
        foreach (var words in HostileWords.All.Select(w => w.Replace('/', '-').Replace('\\', '-').Replace("\0", "", StringComparison.Ordinal)).Where(IsWhole))
        {
            if (Encoding.UTF8.GetByteCount(names[^1] + words) <= LongestInBytes)
            {
                names[^1] += words;
            }
            else
            {
                names.Add(words);
            }
        }

        return [.. names.Where(n => n.Length > 0 && Encoding.UTF8.GetByteCount(n) <= LongestInBytes)];
    }

    [Fact]
    public async Task Hostile_names_are_told_in_one_line_each_and_steer_no_terminal()
    {
        var faulty = Names().Select(n => _folder.Put(n + ".yaml", FaultTests.Small("handbook: {format: 2, id: home}"))).ToArray();

        var used = await Tool.GuideBuilderAsync(["check", .. faulty]);

        var lines = used.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal((1, ""), (used.Exit, used.Output));
        Assert.All(lines, line => Assert.True(line.StartsWith(_folder.Path, StringComparison.Ordinal) || line.StartsWith("guidebuilder: ", StringComparison.Ordinal), line));
        Assert.True(lines.Length >= faulty.Length && faulty.Length > 5, used.Errors);
        Assert.DoesNotContain(used.Errors, c => c is not '\n' and (< ' ' or '\u007F' or '\u202E' or '\u2066' or '\u2028'));
    }

    [Fact]
    public async Task A_home_in_a_hostile_file_is_bound_into_a_hostile_folder_and_its_name_is_shown_as_it_is()
    {
        var name = Names().MaxBy(n => n.Count(c => c == '<'))!;
        var book = _folder.At("books", name);

        var bound = await Handbooks.BindAsync(_folder.Put(name + ".yaml", FaultTests.Small("handbook: {format: 1, id: our-home}")), book);

        Assert.Equal((0, ""), (bound.Exit, bound.Errors));
        var path = Path.Combine(book, "how-this-was-worked-out.html");
        var text = new HtmlParser().ParseDocument(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)).Body!.TextContent;
        Assert.Contains(HostileWords.Seen(name), HostileWords.Seen(text), StringComparison.Ordinal);
        var found = new ConcurrentBag<string>();
        var page = await Watched.PageAsync(chromium, found);
        await page.GotoAsync(new Uri(path).AbsoluteUri);
        Assert.False(await page.EvaluateAsync<bool>("() => 'caught' in window || window.reports.length > 0 || window.frames.length > 0"));
        Findings.AreNone(found);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private static bool IsWhole(string words) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(words)) == words;
}
