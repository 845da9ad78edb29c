using System.CommandLine;
using GuideBuilder.Cli;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cli;

/// <summary>What goes out with the program: the manual names every command and option, and shells can complete them.</summary>
public sealed class DeliveryTests
{
    private static readonly string Manual = File.ReadAllText(Repository.At("src/GuideBuilder.Cli/Delivery/guidebuilder.1")).Replace("\\-", "-", StringComparison.Ordinal);

    private static readonly string Readme = File.ReadAllText(Repository.At("README.md"));

    private static RootCommand Root => Shell.Root();

    public static TheoryData<string> Scripts => ["bash", "fish", "ps1", "zsh"];

    [Fact]
    public void The_manual_names_every_command_and_option() =>
        Findings.AreNone(Named().Where(name => !Manual.Contains(name, StringComparison.Ordinal)));

    [Fact]
    public void The_readme_names_every_command() =>
        Findings.AreNone(Root.Subcommands.Select(c => "| `" + c.Name).Where(name => !Readme.Contains(name, StringComparison.Ordinal)));

    [Fact]
    public void The_manual_names_no_option_that_is_not_there()
    {
        var options = Options().ToHashSet(StringComparer.Ordinal);

        Findings.AreNone(Manual.Split([' ', '\n', ',', ':', '"'], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => word.Trim('[', ']', '.'))
            .Where(word => word.StartsWith("--", StringComparison.Ordinal) && !options.Contains(word)));
    }

    [Theory]
    [InlineData("guidebuilder ", "bind")]
    [InlineData("guidebuilder ch", "check")]
    [InlineData("guidebuilder check --", "--rewrite")]
    [InlineData("guidebuilder check --re", "--rewrite")]
    [InlineData("guidebuilder bind home.yaml --", "--to")]
    [InlineData("guidebuilder bind home.yaml --to book --si", "--since")]
    public void A_line_is_completed_with_what_the_parser_knows(string line, string word) =>
        Assert.Contains(word, Completing.At(Root, line, line.Length));

    [Fact]
    public void Every_command_is_offered() =>
        Assert.Empty(Root.Subcommands.Select(c => c.Name).Except(Completing.At(Root, "guidebuilder ", "guidebuilder ".Length)));

    [Theory]
    [InlineData("[suggest]", "guidebuilder ch")]
    [InlineData("[suggest:x]", "guidebuilder ch")]
    [InlineData("check", "[suggest:1]")]
    public void Other_words_are_no_request_to_complete(params string[] args) => Assert.Null(Completing.PlaceIn(args));

    [Theory]
    [MemberData(nameof(Scripts))]
    public void Each_script_asks_the_program(string shell) =>
        Assert.Contains("[suggest:", File.ReadAllText(Repository.At("src/GuideBuilder.Cli/Delivery/guidebuilder." + shell)), StringComparison.Ordinal);

    private static IEnumerable<string> Named() => Root.Subcommands.Select(c => c.Name).Concat(Options());

    private static IEnumerable<string> Options() =>
        Root.Subcommands.Prepend<Command>(Root).SelectMany(c => c.Options).SelectMany(o => o.Aliases.Prepend(o.Name)).Where(n => n[0] == '-').Distinct(StringComparer.Ordinal);
}
