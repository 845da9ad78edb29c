using System.Diagnostics;
using System.Security.Cryptography;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>Many handbooks at once: one faulty file stops nobody, what is unchanged stays, slices make the whole, and a run that is killed leaves whole handbooks.</summary>
public sealed class ManyTests : IDisposable
{
    private const string Today = "2026-11-24";

    private readonly Folder _folder = new();

    [Fact]
    public async Task One_faulty_file_does_not_stop_the_others()
    {
        Put(3);
        _folder.Put("homes/faulty.yaml", "handbook: {format: 1}\nhome: {nation: atlantis}\nwish: {moves: [meter]}\n");

        var run = await BindAsync("out");

        Assert.Equal(1, run.Exit);
        Assert.Contains("3 bound, 0 unchanged, 1 faulty, 0 removed", run.Output, StringComparison.Ordinal);
        Assert.Contains("faulty.yaml:2:", run.Errors, StringComparison.Ordinal);
        Assert.Equal(["home-1", "home-2", "home-3"], Books("out"));
    }

    [Fact]
    public async Task Two_files_of_one_handbook_are_both_named_and_stop_nobody_else()
    {
        Put(3);
        await BindAsync("out");
        var written = File.ReadAllText(_folder.At("out", "home-2", "index.html"));
        File.Copy(_folder.At("homes", "home-2.yaml"), _folder.At("homes", "a-copy.yaml"));
        Put(4);

        var run = await BindAsync("out");

        Assert.Equal(1, run.Exit);
        Assert.Contains("1 bound, 2 unchanged, 2 faulty, 0 removed", run.Output, StringComparison.Ordinal);
        Assert.Equal(2, run.Errors.Split("HB4015").Length - 1);
        Assert.Contains("a-copy.yaml and ", run.Errors, StringComparison.Ordinal);
        Assert.Equal(written, File.ReadAllText(_folder.At("out", "home-2", "index.html")));
    }

    [Fact]
    public async Task What_is_unchanged_stays_and_what_is_gone_goes_but_for_files_of_others()
    {
        Put(3);
        await BindAsync("out");
        var written = File.GetLastWriteTimeUtc(_folder.At("out", "home-1", "index.html"));
        File.Delete(_folder.At("homes", "home-3.yaml"));
        _folder.Put("out/home-3/mine.txt", "notes");
        File.Delete(_folder.At("out", "home-2", "money.html"));

        var run = await BindAsync("out");

        Assert.Contains("1 bound, 1 unchanged, 0 faulty, 1 removed", run.Output, StringComparison.Ordinal);
        Assert.Equal(written, File.GetLastWriteTimeUtc(_folder.At("out", "home-1", "index.html")));
        Assert.True(File.Exists(_folder.At("out", "home-2", "money.html")));
        Assert.Equal(["mine.txt"], Directory.EnumerateFiles(_folder.At("out", "home-3")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Another_day_binds_everything_again_and_says_so()
    {
        Put(1);
        await BindAsync("out");

        var run = await Tool.GuideBuilderAsync("bind", _folder.At("homes"), "--to", _folder.At("out"), "--today", "2026-11-25");

        Assert.Contains("1 bound, 0 unchanged", run.Output, StringComparison.Ordinal);
        Assert.Contains("The last run was of 2026-11-24", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_slices_make_the_whole_byte_for_byte_list_and_catalogue_included()
    {
        Put(5);
        await BindAsync("whole");
        await BindAsync("parts", "--slice", "1/2");
        Dictionary<string, string> kubernetes = new() { ["JOB_COMPLETION_INDEX"] = "1" };
        Assert.Equal(3, (await Tool.GuideBuilderAsync("bind", "--gather", "--to", _folder.At("parts"), "--today", Today)).Exit);
        await Tool.RunWithAsync(kubernetes, Tool.GuideBuilder, "bind", _folder.At("homes"), "--to", _folder.At("parts"), "--today", Today, "--slice", "array/2");

        Assert.Equal(0, (await Tool.GuideBuilderAsync("bind", "--gather", "--to", _folder.At("parts"), "--today", Today)).Exit);

        Assert.Equal(All("whole"), All("parts"));
    }

    [Fact]
    public async Task An_array_of_Slurm_names_its_slice()
    {
        Put(2);
        Dictionary<string, string> slurm = new() { ["SLURM_ARRAY_TASK_ID"] = "6", ["SLURM_ARRAY_TASK_MIN"] = "5" };

        await Tool.RunWithAsync(slurm, Tool.GuideBuilder, "bind", _folder.At("homes"), "--to", _folder.At("out"), "--today", Today, "--slice", "array/2");

        Assert.Equal(["home-2"], Books("out"));
        Assert.Equal(2, (await BindAsync("out", "--slice", "array/2")).Exit);
        Assert.Equal(2, (await BindAsync("out", "--slice", "3/2")).Exit);
    }

    [Fact]
    public async Task A_public_list_is_for_search_engines_and_a_private_one_is_not()
    {
        Put(2);
        await BindAsync("public", "--edition", "public", "--base-address", "https://charity.example/plans");
        await BindAsync("private");

        Assert.Contains("Sitemap: https://charity.example/plans/sitemap.xml", File.ReadAllText(_folder.At("public", "robots.txt")), StringComparison.Ordinal);
        Assert.Contains("<loc>https://charity.example/plans/plan-1/</loc>", File.ReadAllText(_folder.At("public", "sitemap.xml")), StringComparison.Ordinal);
        Assert.DoesNotContain("noindex", File.ReadAllText(_folder.At("public", "index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("Elm Row", string.Concat(All("public").Values), StringComparison.Ordinal);
        Assert.Contains("1 Elm Row", File.ReadAllText(_folder.At("private", "index.html")), StringComparison.Ordinal);
        Assert.Contains("<br>Bound on: 24 November 2026<br>Works day: not to be fixed yet<br>Needed by: no date yet</td>", File.ReadAllText(_folder.At("private", "index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("24 November 2026", File.ReadAllText(_folder.At("public", "index.html")).Split("<footer>")[0], StringComparison.Ordinal);
        Assert.Contains("noindex", File.ReadAllText(_folder.At("private", "index.html")), StringComparison.Ordinal);
        Assert.Equal("User-agent: *\nDisallow: /\n", File.ReadAllText(_folder.At("private", "robots.txt")));
    }

    [Fact]
    public async Task Killed_at_any_moment_each_handbook_is_whole_old_or_new()
    {
        Put(6);
        await BindAsync("out");
        var (random, kills) = (new Random(20261124), Sizes.Of("kills"));
        for (var kill = 0; kill < kills; kill++)
        {
            var start = new ProcessStartInfo(Tool.GuideBuilder, ["bind", _folder.At("homes"), "--to", _folder.At("out"), "--today", Invariant(kill), "--jobs", "2"]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using (var run = Process.Start(start)!)
            {
                await Task.Delay(random.Next(200, 2500), TestContext.Current.CancellationToken);
                run.Kill(entireProcessTree: true);
                await run.WaitForExitAsync(TestContext.Current.CancellationToken);
            }

            Findings.AreNone(Books("out").SelectMany(b => Bytes.Broken(_folder.At("out", b))));
        }

        Assert.Equal(0, (await BindAsync("out")).Exit);
        Findings.AreNone(Directory.EnumerateFileSystemEntries(_folder.At("out"), ".*").Select(p => Path.GetFileName(p)));
    }

    [Fact]
    public async Task Collating_finds_what_was_changed_by_hand_and_writes_json()
    {
        Put(1);
        await BindAsync("out");
        Assert.Equal(0, (await Tool.GuideBuilderAsync("collate", _folder.At("out"), "--today", Today)).Exit);
        File.AppendAllText(_folder.At("out", "home-1", "money.html"), "<p id=text>{{ <a href=\"nowhere.html\">x</a>");

        var run = await Tool.GuideBuilderAsync("collate", _folder.At("out"), "--today", Today, "--json");

        Assert.Equal(1, run.Exit);
        using var json = System.Text.Json.JsonDocument.Parse(run.Output);
        var kinds = json.RootElement.GetProperty("findings").EnumerateArray().Where(f => f.GetProperty("severity").GetString() == "error").Select(f => f.GetProperty("kind").GetString()!).ToHashSet(StringComparer.Ordinal);
        Findings.AreNone(new[] { "file-changed", "id-twice", "left-behind", "link" }.Except(kinds));
        Assert.DoesNotContain("html", kinds);
        Assert.Equal(1, (await Tool.GuideBuilderAsync("collate", "--to-publish", "--today", Today)).Exit);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Dispose();

    private static string Invariant(int kill) => FormattableString.Invariant($"2027-01-{(kill % 28) + 1:00}");

    private void Put(int count)
    {
        for (var i = 1; i <= count; i++)
        {
            _folder.Put($"homes/home-{i}.yaml", $"handbook: {{format: 1, id: home-{i}, public-id: plan-{i}}}\nhome: {{nation: england, kind: semi, address: {i} Elm Row}}\nwish: {{moves: [cutout, meter]}}\n");
        }
    }

    private Task<Tool> BindAsync(string to, params string[] more) => Tool.GuideBuilderAsync(["bind", _folder.At("homes"), "--to", _folder.At(to), "--today", Today, .. more]);

    private string[] Books(string to) => [.. Directory.EnumerateDirectories(_folder.At(to)).Select(p => Path.GetFileName(p)).Where(n => !n.StartsWith('.')).Order(StringComparer.Ordinal)];

    private SortedDictionary<string, string> All(string to) => new(
        Directory.EnumerateFiles(_folder.At(to), "*", SearchOption.AllDirectories).ToDictionary(p => Path.GetRelativePath(_folder.At(to), p), p => Path.GetExtension(p) is ".html" or ".json" or ".txt" ? File.ReadAllText(p) : Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(p))), StringComparer.Ordinal),
        StringComparer.Ordinal);
}
