using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The verbs that make one file write it where they are told, and over no other kind of file.</summary>
public sealed class OutputTests : IDisposable
{
    private readonly Folder _folder = new();

    [Theory]
    [InlineData("form", "<!DOCTYPE html>")]
    [InlineData("schema", "{")]
    public async Task The_file_is_made_and_made_again_with_the_same_bytes(string verb, string begins)
    {
        var file = _folder.At("made");

        Assert.Equal(0, (await Tool.GuideBuilderAsync(verb, "--to", file, "--today", Handbooks.Today)).Exit);
        var before = Bytes.Of(_folder.Path);
        Assert.Equal(0, (await Tool.GuideBuilderAsync(verb, "--to", file, "--today", Handbooks.Today)).Exit);
        var printed = await Tool.GuideBuilderAsync(verb, "--today", Handbooks.Today);

        Assert.Equal(before, Bytes.Of(_folder.Path));
        Assert.Equal(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), printed.Output);
        Assert.StartsWith(begins, printed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("form")]
    [InlineData("schema")]
    public async Task Another_file_is_not_overwritten(string verb)
    {
        var file = _folder.Put("home.yaml", FaultTests.Small("handbook: {format: 1}"));
        var before = Bytes.Of(_folder.Path);

        var made = await Tool.GuideBuilderAsync(verb, "--to", file, "--today", Handbooks.Today);

        Assert.Equal(3, made.Exit);
        Assert.Contains("HB4052", made.Errors, StringComparison.Ordinal);
        Assert.Equal(before, Bytes.Of(_folder.Path));
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
