using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>Only folders that are new or our own are written, whole or not at all, and what others put there stays.</summary>
public sealed class FolderTests : IDisposable
{
    private readonly Folder _folder = new();

    private readonly string _answers;

    public FolderTests() => _answers = _folder.Put("home.yaml", FaultTests.Small("handbook: {format: 1}"));

    [Fact]
    public async Task A_folder_of_somebody_elses_is_refused_and_not_touched()
    {
        _folder.Put("photos/cat.jpg", "meow");

        await IsRefusedAsync(_folder.At("photos"));

        Assert.Equal(["cat.jpg"], Directory.EnumerateFileSystemEntries(_folder.At("photos")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task A_file_is_refused() => await IsRefusedAsync(_folder.Put("notes.txt", "mine"));

    [Fact]
    public async Task A_link_is_refused()
    {
        Directory.CreateDirectory(_folder.At("elsewhere"));
        Directory.CreateSymbolicLink(_folder.At("link"), _folder.At("elsewhere"));

        await IsRefusedAsync(_folder.At("link"));

        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.At("elsewhere")));
    }

    [Fact]
    public async Task A_repository_is_refused()
    {
        Directory.CreateDirectory(_folder.At("project", ".git"));

        await IsRefusedAsync(_folder.At("project"));
    }

    [Theory]
    [InlineData("/")]
    [InlineData(".")]
    public async Task The_root_and_the_folder_one_is_in_are_refused(string target) => await IsRefusedAsync(target);

    [Fact]
    public async Task Binding_again_replaces_our_files_keeps_others_and_leaves_nothing_beside()
    {
        var book = _folder.At("book");
        Assert.Equal(0, (await Handbooks.BindAsync(_answers, book)).Exit);
        var first = Bytes.Of(book);
        _folder.Put("book/my-notes.txt", "ring on Monday");
        _folder.Put("book/photos/meter.jpg", "a picture");
        _folder.Put("book/index.html", "spoilt");

        Assert.Equal(0, (await Handbooks.BindAsync(_answers, book)).Exit);

        Assert.Equal("ring on Monday", await File.ReadAllTextAsync(Path.Combine(book, "my-notes.txt"), TestContext.Current.CancellationToken));
        File.Delete(Path.Combine(book, "my-notes.txt"));
        Directory.Delete(Path.Combine(book, "photos"), recursive: true);
        Assert.Equal(first, Bytes.Of(book));
        Assert.Equal(["book", "home.yaml"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_file_of_somebody_elses_that_has_the_name_of_a_page_is_not_replaced()
    {
        var book = _folder.At("book");
        Assert.Equal(0, (await Handbooks.BindAsync(_answers, book)).Exit);
        var list = File.ReadAllLines(Path.Combine(book, "bound-files.txt")).Where(l => !l.EndsWith(" money.html", StringComparison.Ordinal));
        _folder.Put("book/bound-files.txt", string.Join('\n', list) + "\n");
        _folder.Put("book/money.html", "my own sums");

        var bound = await Handbooks.BindAsync(_answers, book);

        Assert.Equal((3, ""), (bound.Exit, bound.Output));
        Assert.Contains("money.html: was not made by guidebuilder", bound.Errors, StringComparison.Ordinal);
        Assert.Equal("my own sums", File.ReadAllText(Path.Combine(book, "money.html")));
    }

    [Fact]
    public async Task A_run_that_was_killed_leaves_nothing_that_the_next_one_does_not_clear()
    {
        _folder.Put(".book.guidebuilder-new/bound-files.txt", "half");
        _folder.Put(".book.guidebuilder-new/index.html", "half");

        Assert.Equal(0, (await Handbooks.BindAsync(_answers, _folder.At("book"))).Exit);

        Assert.Equal(["book", "home.yaml"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private async Task IsRefusedAsync(string target)
    {
        var bound = await Handbooks.BindAsync(_answers, target);

        Assert.Equal((3, ""), (bound.Exit, bound.Output));
        Assert.Contains(target, bound.Errors, StringComparison.Ordinal);
    }
}
