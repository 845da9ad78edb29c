using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Hostile;

/// <summary>Whatever stands on the command line: understood, or refused in a line with the number that was promised, and nothing is written.</summary>
public sealed class ArgumentTests : IDisposable
{
    private readonly Folder _folder = new();

    // Faulty, so that a command line that is understood ends with 1 before any planning.
    private readonly string _faulty;

    public ArgumentTests() => _faulty = _folder.Put("home.yaml", "handbook: {format: 1}\nhome: {nation: nowhere}\nwish: {moves: [meter]}\n");

    [Theory]
    [InlineData("HB4010", "--today", "0000-01-01")]
    [InlineData("HB4010", "--today", "1899-12-31")]
    [InlineData("HB4010", "--today", "2200-01-01")]
    [InlineData("HB4010", "--today", "9999-12-31")]
    [InlineData("HB4010", "--today", "2026-02-30")]
    [InlineData("HB4010", "--today", "2026-11-24 ")]
    [InlineData("HB4010", "--today", "２０２６-11-24")]
    [InlineData("HB4032", "--today", "")]
    [InlineData("HB4012", "--today", "-2026-11-24")]
    [InlineData("HB4013", "--today")]
    [InlineData("HB4013", "--seed", "18446744073709551616")]
    [InlineData("HB4013", "--seed", "+5")]
    [InlineData("HB4013", "--seed", " 5")]
    [InlineData("HB4013", "--seed", "1e3")]
    [InlineData("HB4013", "--seed", "0x10")]
    [InlineData("HB4013", "--seed", "1", "--seed", "2")]
    [InlineData("HB4012", "--seed", "-1")]
    [InlineData("HB4012", "--TODAY", "2026-11-24")]
    [InlineData("HB4032", "--guidance", "")]
    [InlineData("HB4032", "")]
    [InlineData("HB4012", "-")]
    public async Task What_cannot_be_meant_is_wrong_use(string code, params string[] more) => Refused(2, code, await Tool.GuideBuilderAsync(["check", _faulty, .. more]));

    [Theory]
    [InlineData("--today", "1900-01-01")]
    [InlineData("--today", "2199-12-31")]
    [InlineData("--seed", "0")]
    [InlineData("--seed", "18446744073709551615")]
    [InlineData("--seed=007")]
    public async Task The_ends_of_what_can_be_meant_are_understood(params string[] more)
    {
        var used = await Tool.GuideBuilderAsync(["check", _faulty, .. more]);

        Assert.Equal((1, ""), (used.Exit, used.Output));
        Assert.Contains(_faulty + ":2:16: ", used.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("HB4031")]
    [InlineData("HB4030", "unbind")]
    [InlineData("HB4030", "Check")]
    [InlineData("HB4030", "[suggest]", "che")]
    [InlineData("HB4030", "@arguments")]
    [InlineData("HB4012", "-x.yaml")]
    public async Task What_is_no_command_is_answered_with_the_commands(string code, params string[] arguments)
    {
        var used = await Tool.GuideBuilderAsync(arguments);

        Refused(2, code, used);
        Assert.True(code == "HB4012" || used.Errors.Contains("check, plan, because, bind", StringComparison.Ordinal), used.Errors);
    }

    [Fact]
    public async Task A_name_that_begins_with_a_dash_is_a_file_only_behind_two_dashes_or_with_its_folder()
    {
        File.Copy(_faulty, _folder.At("-x.yaml"));

        Assert.Equal((2, 1, 1), (
            (await InFolderAsync("check -x.yaml")).Exit,
            (await InFolderAsync("check -- -x.yaml")).Exit,
            (await InFolderAsync("check ./-x.yaml")).Exit));
    }

    [Fact]
    public async Task Every_file_that_cannot_be_read_is_named()
    {
        var used = await Tool.GuideBuilderAsync("check", "no-such.yaml", _folder.Path, "nor-this.yaml");

        Assert.Equal((3, ""), (used.Exit, used.Output));
        Assert.Equal(3, used.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Theory]
    [InlineData("no-such-folder")]
    [InlineData("empty")]
    [InlineData("home.yaml")]
    public async Task A_guidance_that_is_not_there_ends_with_3(string name)
    {
        Directory.CreateDirectory(_folder.At("empty"));

        Refused(3, "HB4002", await Tool.GuideBuilderAsync("check", "--guidance", _folder.At(name)));
    }

    [Theory]
    [InlineData("yesterday")]
    [InlineData("-1")]
    [InlineData(" 5")]
    [InlineData("1e9")]
    [InlineData("7258118400")]
    [InlineData("99999999999999999999")]
    public async Task A_SOURCE_DATE_EPOCH_that_is_no_moment_of_these_centuries_is_wrong_use(string epoch) =>
        Refused(2, "HB4011", await Tool.RunWithAsync(new() { ["SOURCE_DATE_EPOCH"] = epoch }, Tool.GuideBuilder, "check", _faulty));

    [Fact]
    public async Task A_pipe_is_read_to_its_end() =>
        Assert.Contains("/dev/stdin:2:16: ", (await InFolderAsync("check /dev/stdin < /dev/null; cat home.yaml | \"$0\" check /dev/stdin")).Errors, StringComparison.Ordinal);

    [Fact]
    public async Task A_file_without_end_is_too_long() =>
        Assert.Contains("[HB1001]", (await Tool.GuideBuilderAsync("check", "/dev/zero")).Errors, StringComparison.Ordinal);

    [Fact]
    public async Task What_would_steer_the_terminal_is_not_said_back_to_it()
    {
        var used = await Tool.GuideBuilderAsync("check", "a\u001b[2Jb\u202Ec\n.yaml");

        Refused(3, "HB4001", used);
        Assert.Contains("a·[2Jb·c·.yaml", used.Errors, StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private static void Refused(int exit, string code, Tool used)
    {
        Assert.Equal((exit, ""), (used.Exit, used.Output));
        var line = Assert.Single(used.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.StartsWith("guidebuilder: ", line, StringComparison.Ordinal);
        Assert.EndsWith($"[{code}]", line, StringComparison.Ordinal);
    }

    private Task<Tool> InFolderAsync(string line) => Tool.RunAsync("/bin/sh", "-c", $"cd '{_folder.Path}' && \"$0\" {line}", Tool.GuideBuilder);
}
