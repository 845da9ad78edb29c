using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Shell;

public sealed class UseTests
{
    [Fact]
    public async Task The_version_is_one_line_on_standard_output() =>
        Assert.Equal(new Tool(0, "0.1.0\n", ""), await Tool.GuideBuilderAsync("--version"));

    [Theory]
    [InlineData("--nope")]
    [InlineData("@arguments.txt")]
    public async Task Wrong_use_exits_with_2_and_speaks_on_standard_error(string argument)
    {
        var tool = await Tool.GuideBuilderAsync(argument);

        Assert.Equal((2, ""), (tool.Exit, tool.Output));
        Assert.Contains(argument, tool.Errors, StringComparison.Ordinal);
    }
}
