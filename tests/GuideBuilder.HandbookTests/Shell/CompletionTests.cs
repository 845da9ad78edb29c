using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The script for bash, run by bash: it asks the program what may stand at the cursor.</summary>
public sealed class CompletionTests
{
    private const string Bash = "/usr/bin/bash";

    [Theory]
    [InlineData("ch", "check")]
    [InlineData("check --re", "--rewrite")]
    [InlineData("bind home.yaml --to book --se", "--seed")]
    [InlineData("nothing-like-it", "")]
    public async Task A_word_begun_is_completed(string typed, string completed)
    {
        Assert.SkipUnless(File.Exists(Bash), "no bash is installed");
        var script = Repository.At("src/GuideBuilder.Cli/Delivery/guidebuilder.bash");
        var line = $"{Tool.GuideBuilder} {typed}";

        var said = await Tool.RunAsync(Bash, "-c", """
            source "$1"
            COMP_LINE=$2 COMP_POINT=${#2}
            read -ra COMP_WORDS <<<"$COMP_LINE"
            COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
            _guidebuilder
            echo "${COMPREPLY[*]}"
            """, "bash", script, line);

        Assert.Equal((0, completed + "\n", ""), (said.Exit, said.Output, said.Errors));
    }
}
