using System.Text.RegularExpressions;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>What the README tells people to type, typed.</summary>
public sealed partial class ReadmeTests : IDisposable
{
    private static readonly string Readme = File.ReadAllText(Repository.At("README.md"));

    private readonly Folder _folder = new();

    [Fact]
    public async Task Each_command_of_the_table_is_a_command_with_these_options()
    {
        var rows = Readme.Split("## Commands")[1].Split("## Installing")[0].Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal)).ToList();
        var verbs = rows.Select(r => Word().Match(r).Groups[1].Value).ToList();
        foreach (var (row, verb) in rows.Zip(verbs))
        {
            var help = await Tool.GuideBuilderAsync(verb, "--help");
            Assert.Equal(0, help.Exit);
            Findings.AreNone(Options().Matches(row).Select(m => m.Value).Where(o => !help.Output.Contains(o, StringComparison.Ordinal)).Select(o => $"{verb} has no {o}"));
        }

        var all = await Tool.GuideBuilderAsync("--help");
        Assert.Equal(9, verbs.Count);
        Findings.AreNone(verbs.Where(v => !all.Output.Contains(v, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_lines_for_many_handbooks_do_what_they_say()
    {
        Home(1);
        Home(2);
        Shims();
        var lines = Readme.Split("## Many handbooks at once")[1].Split("## What you keep")[0].Split('\n').Where(l => l.StartsWith("guidebuilder ", StringComparison.Ordinal) || l.StartsWith("parallel ", StringComparison.Ordinal) || l.StartsWith("sbatch ", StringComparison.Ordinal)).Select(l => l.Split("   ")[0]).ToList();
        Assert.Equal(6, lines.Count);
        Assert.Equal((0, ""), await TypeAsync(lines[0]));
        var whole = File.ReadAllText(_folder.At("out", "bound.json"));

        foreach (var k in Enumerable.Range(1, 20))
        {
            Assert.Equal((0, ""), await TypeAsync(lines[1].Replace("3/20", $"{k}/20", StringComparison.Ordinal)));
        }

        foreach (var line in lines.Skip(2))
        {
            Assert.Equal((0, ""), await TypeAsync(line));
        }

        Assert.Equal(whole, File.ReadAllText(_folder.At("out", "bound.json")));
    }

    [Fact]
    public async Task On_a_terminal_a_run_over_many_tells_how_far_it_is_and_how_long_it_will_take()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script"), "there is no script, which makes a terminal");
        Home(1);
        Home(2);

        var run = await Tool.RunAsync("/usr/bin/script", "-qec", $"'{Tool.GuideBuilder}' bind '{_folder.At("homes")}' --to '{_folder.At("out")}' --today {Handbooks.Today}", "/dev/null");

        Assert.Equal(0, run.Exit);
        Assert.Matches("1 of 2, [0-9]+ a minute, about [0-9]+:[0-9]{2} left .*2 of 2, [0-9]+ a minute, about 0:00 left", run.Output.ReplaceLineEndings(" "));
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private async Task<(int Exit, string Errors)> TypeAsync(string line)
    {
        var path = _folder.At("bin") + ":" + Environment.GetEnvironmentVariable("PATH");
        var run = await Tool.RunWithAsync(new() { ["PATH"] = path }, "/bin/bash", "-c", $"cd '{_folder.Path}' && {line}");
        return (run.Exit, run.Exit == 0 ? "" : $"{line}: {run.Errors}");
    }

    private void Home(int number) =>
        _folder.Put($"homes/home-{number}.yaml", $"handbook: {{format: 1, id: home-{number}}}\nhome: {{nation: england}}\nwish: {{moves: [cutout, meter]}}\n");

    // The program under its own name on the day of all tests, and for the two that share work out what they would do.
    private void Shims()
    {
        Shim("guidebuilder", $"exec '{Tool.GuideBuilder}' \"$@\" --today {Handbooks.Today}");
        Shim("parallel", "while [ \"${1:-}\" != ::: ]; do line=\"${line:-} $1\"; shift; done; shift; for i in \"$@\"; do eval \"${line//\\{\\}/$i}\" || exit; done");
        Shim("sbatch", "last=${1#--array=1-}; case $1 in --array=*) ;; *) last=1;; esac; for i in $(seq \"$last\"); do SLURM_ARRAY_TASK_ID=$i SLURM_ARRAY_TASK_MIN=1 bash -c \"$3\" || exit; done");
    }

    private void Shim(string name, string script)
    {
        var path = _folder.Put("bin/" + name, $"#!/bin/bash\n{script}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [GeneratedRegex("^\\| `([a-z]+)")]
    private static partial Regex Word();

    [GeneratedRegex("--[a-z][a-z-]*")]
    private static partial Regex Options();
}
