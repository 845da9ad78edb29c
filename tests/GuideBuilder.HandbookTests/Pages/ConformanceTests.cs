using System.Text.Json;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Pages;

/// <summary>The Nu checker of HTML reads every page of every home in one run.</summary>
public sealed class ConformanceTests(Handbooks handbooks)
{
    private static readonly string Checker = Repository.At("artifacts/npm/node_modules/vnu-jar/build/dist/vnu.jar");

    [Fact]
    public async Task The_checker_of_HTML_finds_no_error()
    {
        Assert.SkipUnless(File.Exists(Checker), "the Nu checker is not there (tests/run fetches it)");
        Assert.SkipUnless(File.Exists("/usr/bin/java"), "no Java is installed");
        var pages = Handbooks.Homes.SelectMany(home => handbooks.PagesOf(home).Select(page => Path.Combine(handbooks.Of(home), page)));

        var checkedPages = await Tool.RunAsync("/usr/bin/java", ["-jar", Checker, "--format", "json", "--errors-only", .. pages]);

        using var said = JsonDocument.Parse(checkedPages.Errors);
        Findings.AreNone(said.RootElement.GetProperty("messages").EnumerateArray()
            .Where(m => m.GetProperty("type").GetString() != "info")
            .Select(m => $"{m.GetProperty("url").GetString()}:{m.GetProperty("lastLine").GetInt32()}: {m.GetProperty("message").GetString()}"));
    }
}
