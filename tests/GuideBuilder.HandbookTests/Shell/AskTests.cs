using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The questionnaire in the terminal, tried as a new user would: a file that was not there, lines typed, a handbook bound from it.</summary>
public sealed class AskTests : IDisposable
{
    // The second home: a terrace in England, of which almost nothing is known.
    private static readonly string[] Typed =
    [
        "1", "a terraced house", "3", "terrace", "don't know", "section", "", "section", "", "section", "", "section", "", "section", "",
        "1", "1 2", "section", "", "0", "section", "", "section", "", "section", "", "section", "", "section", "", "section", "", "section", "",
    ];

    private readonly Folder _folder = new();

    [Fact]
    public async Task The_second_home_is_asked_saved_and_bound()
    {
        var file = _folder.At("our-home.yaml");

        var asked = await Tool.TypingAsync(Typed, "ask", file, "--today", Handbooks.Today);

        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.DoesNotContain('\u001B', asked.Output);
        Assert.Contains("is none of the answers.", (await Tool.TypingAsync(["1", "teraced house"], "ask", _folder.At("other.yaml"), "--today", Handbooks.Today)).Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(0, (await Handbooks.BindAsync(file, _folder.At("book"))).Exit);
        Assert.True(File.Exists(_folder.At("book", "index.html")));
    }

    [Fact]
    public async Task Input_that_ends_too_early_is_saved_and_ends_with_1()
    {
        var file = _folder.At("our-home.yaml");

        var asked = await Tool.TypingAsync(["england", "semi"], "ask", file, "--today", Handbooks.Today);

        Assert.Equal((1, ""), (asked.Exit, asked.Errors));
        Assert.Contains("  kind: semi\n", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Contains("No handbook can be bound from it before", asked.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_with_a_fault_is_not_touched()
    {
        var file = _folder.Put("our-home.yaml", FaultTests.Small("handbook: {format: 2}"));
        var before = Bytes.Of(_folder.Path);

        var asked = await Tool.TypingAsync(["england"], "ask", file, "--today", Handbooks.Today);

        Assert.Equal((1, ""), (asked.Exit, asked.Output));
        Assert.Equal(before, Bytes.Of(_folder.Path));
    }

    [Fact]
    public async Task A_name_that_makes_no_id_is_wrong_use()
    {
        var asked = await Tool.TypingAsync(["england"], "ask", _folder.At("x.yaml"), "--today", Handbooks.Today);

        Assert.Equal((2, ""), (asked.Exit, asked.Output));
        Assert.Contains("our-home.yaml", asked.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_that_cannot_be_written_ends_with_3()
    {
        var asked = await Tool.TypingAsync(["england"], "ask", _folder.At("no-such-folder", "our-home.yaml"), "--today", Handbooks.Today);

        Assert.Equal(3, asked.Exit);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
