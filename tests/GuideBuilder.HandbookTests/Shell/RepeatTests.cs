using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The same answers give the same bytes whatever the machine's language and clock.</summary>
public sealed class RepeatTests(Handbooks handbooks)
{
    [Theory]
    [InlineData("tr_TR.UTF-8", "Pacific/Kiritimati", "tr-TR", "TİTLE")]
    [InlineData("de_DE.UTF-8", "UTC", "de-DE", "TITLE")]
    [InlineData("fa_IR.UTF-8", "Asia/Tehran", "fa-IR", "TITLE")]
    [InlineData("th_TH.UTF-8", "UTC", "th-TH", "TITLE")]
    [InlineData("sv_SE.UTF-8", "Pacific/Kiritimati", "sv-SE", "TITLE")]
    public async Task Another_language_and_another_time_zone_change_no_byte(string language, string zone, string culture, string title)
    {
        using var folder = new Folder();
        var home = Handbooks.Homes[0];

        var bound = await Tool.RunWithAsync(
            new() { ["LANG"] = language, ["LC_ALL"] = language, ["TZ"] = zone, ["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = "0", ["DOTNET_STARTUP_HOOKS"] = typeof(RepeatTests).Assembly.Location },
            Tool.Managed,
            "bind", Repository.At("answers/" + home + ".yaml"), "--to", folder.At("book"), "--today", Handbooks.Today);

        Assert.SkipWhen(bound.Errors.Contains("libicu", StringComparison.Ordinal), "no libicu is installed, so no culture is real");
        Assert.Equal((0, $"culture {culture} {title} {zone}\n"), (bound.Exit, bound.Errors));
        Assert.Equal(Bytes.Of(handbooks.Of(home)), Bytes.Of(folder.At("book")));
    }

    [Fact]
    public async Task The_day_comes_from_SOURCE_DATE_EPOCH_where_no_day_is_given()
    {
        using var folder = new Folder();
        var home = Handbooks.Homes[0];

        // 1795521600 is 2026-11-24 12:00 UTC.
        var bound = await Tool.RunWithAsync(new() { ["SOURCE_DATE_EPOCH"] = "1795521600" }, Tool.GuideBuilder, "bind", Repository.At("answers/" + home + ".yaml"), "--to", folder.At("book"));

        Assert.Equal((0, ""), (bound.Exit, bound.Errors));
        Assert.Equal(Bytes.Of(handbooks.Of(home)), Bytes.Of(folder.At("book")));
    }

    [Fact]
    public async Task The_order_of_the_files_on_the_disk_changes_no_byte()
    {
        using var folder = new Folder();
        var home = Handbooks.Homes[0];
        var names = Directory.EnumerateFiles(Repository.At("content"), "*", SearchOption.AllDirectories).Select(p => Path.GetRelativePath(Repository.At("content"), p)).Order(StringComparer.Ordinal).ToArray();
        var (there, back) = (Copied(folder, "there", names), Copied(folder, "back", [.. names.Reverse()]));

        var one = await Tool.GuideBuilderAsync("bind", Repository.At("answers/" + home + ".yaml"), "--to", folder.At("one"), "--guidance", there, "--edition", "neighbour", "--today", Handbooks.Today);
        var other = await Tool.GuideBuilderAsync("bind", Repository.At("answers/" + home + ".yaml"), "--to", folder.At("other"), "--guidance", back, "--edition", "neighbour", "--today", Handbooks.Today);

        Assert.Equal((0, 0), (one.Exit, other.Exit));
        Assert.Equal(Bytes.Of(folder.At("one")), Bytes.Of(folder.At("other")));
    }

    [Fact]
    public async Task One_job_and_two_make_the_same_bytes()
    {
        using var folder = new Folder();
        folder.Put("homes/one.yaml", FaultTests.Small("handbook: {format: 1, id: one}"));
        folder.Put("homes/two.yaml", FaultTests.Small("handbook: {format: 1, id: two}"));

        foreach (var jobs in new[] { "1", "2" })
        {
            Assert.Equal(0, (await Tool.GuideBuilderAsync("bind", folder.At("homes"), "--to", folder.At(jobs), "--jobs", jobs, "--edition", "neighbour", "--today", Handbooks.Today)).Exit);
        }

        Assert.Equal(Bytes.Of(folder.At("1")), Bytes.Of(folder.At("2")));
    }

    [Fact]
    public async Task A_SOURCE_DATE_EPOCH_that_is_no_number_is_wrong_use()
    {
        using var folder = new Folder();

        var bound = await Tool.RunWithAsync(new() { ["SOURCE_DATE_EPOCH"] = "yesterday" }, Tool.GuideBuilder, "bind", Repository.At("answers/" + Handbooks.Homes[0] + ".yaml"), "--to", folder.At("book"));

        Assert.Equal(2, bound.Exit);
        Assert.False(Directory.Exists(folder.At("book")));
    }

    [Fact]
    public void The_committed_handbook_is_what_the_first_home_binds_to() =>
        Assert.Equal(Bytes.Of(Repository.At("site")), Bytes.Of(handbooks.Of(Handbooks.Homes[0])));

    // A disk hands out names in an order of its own, which on many follows from when they were made.
    private static string Copied(Folder folder, string name, string[] files)
    {
        foreach (var file in files)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(folder.At(name, file))!);
            File.Copy(Path.Combine(Repository.At("content"), file), folder.At(name, file));
        }

        return folder.At(name);
    }
}
