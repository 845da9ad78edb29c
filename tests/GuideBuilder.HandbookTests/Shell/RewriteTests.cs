using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary><c>check --rewrite</c> writes a file that is right, in place, and touches no other.</summary>
public sealed class RewriteTests : IDisposable
{
    private readonly Folder _folder = new();

    [Fact]
    public async Task A_file_is_put_into_the_plain_layout_in_place_and_keeps_its_permissions()
    {
        var file = _folder.Put("home.yaml", "# Ours.\n" + FaultTests.Small("handbook: {format: 1}"));
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        var rewritten = await RewriteAsync(file);

        Assert.Equal((0, ""), (rewritten.Exit, rewritten.Errors));
        Assert.StartsWith("# Ours.\n\n# This file\nhandbook:\n  format: 1\n\n", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Equal(["home.yaml"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public async Task A_file_with_a_fault_stays_as_it_is()
    {
        var file = _folder.Put("home.yaml", FaultTests.Small("handbook: {format: 2}"));
        var before = Bytes.Of(_folder.Path);

        var rewritten = await RewriteAsync(file);

        Assert.Equal((1, ""), (rewritten.Exit, rewritten.Output));
        Assert.Equal(before, Bytes.Of(_folder.Path));
    }

    [Fact]
    public async Task Without_a_file_it_is_wrong_use() => Assert.Equal(2, (await RewriteAsync()).Exit);

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private static Task<Tool> RewriteAsync(params string[] files) => Tool.GuideBuilderAsync(["check", "--rewrite", "--today", Handbooks.Today, .. files]);
}
