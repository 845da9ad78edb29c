using GuideBuilder.HandbookTests.Shell;
using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>A console that is full, closed or gone is told apart from a fault, and never ends in a page of program text.</summary>
public sealed class ConsoleTests : IDisposable
{
    private readonly Folder _folder = new();

    public ConsoleTests()
    {
        _folder.Put("home.yaml", FaultTests.Small("handbook: {format: 1}"));
        _folder.Put("faulty.yaml", FaultTests.Small("handbook: {format: 2}"));
    }

    [Theory]
    [InlineData("check faulty.yaml 2>/dev/full", 3, "")]
    [InlineData("--version >/dev/full", 3, "HB4033")]
    [InlineData("--version >&-", 3, "HB4033")]
    [InlineData("--help >/dev/full", 3, "HB4033")]
    [InlineData("plan home.yaml >/dev/full", 3, "HB4033")]
    [InlineData("plan home.yaml <&- >/dev/null", 0, "")]
    [InlineData("plan home.yaml | true", 0, "")]
    [InlineData("unbind 2>/dev/full", 2, "")]
    [InlineData("unbind 2>&-", 2, "")]
    public async Task A_console_that_cannot_be_written_is_said_where_it_can_be(string line, int exit, string code)
    {
        var used = await Tool.RunAsync("/bin/sh", "-c", $"cd '{_folder.Path}' && \"$0\" {line}", Tool.GuideBuilder);

        Assert.Equal((exit, ""), (used.Exit, used.Output));
        Assert.DoesNotContain("   at ", used.Errors, StringComparison.Ordinal);
        Assert.Contains(code, used.Errors, StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();
}
