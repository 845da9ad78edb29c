using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Shell;

/// <summary>The same answers give the same bytes whatever the machine's language and clock.</summary>
public sealed class RepeatTests(Handbooks handbooks)
{
    [Theory]
    [InlineData("tr_TR.UTF-8", "Pacific/Kiritimati", "tr-TR", "TİTLE")]
    [InlineData("de_DE.UTF-8", "UTC", "de-DE", "TITLE")]
    public async Task Another_language_and_another_time_zone_change_no_byte(string language, string zone, string culture, string title)
    {
        using var folder = new Folder();
        var home = Handbooks.Homes[0];

        var bound = await Tool.RunWithAsync(
            new() { ["LANG"] = language, ["LC_ALL"] = language, ["TZ"] = zone, ["DOTNET_SYSTEM_GLOBALIZATION_INVARIANT"] = "0", ["DOTNET_STARTUP_HOOKS"] = typeof(RepeatTests).Assembly.Location },
            Tool.GuideBuilder,
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
}
