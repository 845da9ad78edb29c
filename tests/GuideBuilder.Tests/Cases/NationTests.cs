using System.Text;
using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>The demo home in another nation.</summary>
public sealed class NationTests
{
    private static readonly string[] British = [@"\b105\b", "0800 111 999", "0808 111 999", "Ofgem", "Energy Ombudsman", "Citizens Advice", "HSG47", "BS 7671", "MPAN", "HM Land Registry", "ESQCR"];

    private static readonly string[] Irish = ["ESB Networks", @"\bCRU\b", @"\bHSA\b", "Health and Safety Authority", "Safe Electric", "1800 372 999", "1850", "Tailte", "Gas Networks Ireland", "€"];

    private static readonly string[] Northern = ["NIE Networks", "03457 643 643", "Utility Regulator", "HSENI", "Consumer Council"];

    [Theory]
    [InlineData("england")]
    [InlineData("wales")]
    [InlineData("scotland")]
    public void No_number_and_no_body_of_an_island_to_the_west_in_Great_Britain(string nation) => Nowhere(nation, [.. Irish, .. Northern]);

    [Fact]
    public void No_number_and_no_body_of_Great_Britain_or_Northern_Ireland_in_Ireland() => Nowhere("ireland", [.. British, .. Northern, "£"]);

    [Fact]
    public void No_105_and_no_Irish_body_in_Northern_Ireland() =>
        Nowhere("northern-ireland", [@"\b105\b", "0800 111 999", "Ofgem", "Energy Ombudsman", "MPAN", .. Irish]);

    [Fact]
    public void Only_Ireland_has_the_duty_and_the_letter_of_appointment()
    {
        var (irish, welsh) = (In("ireland"), In("wales"));

        Assert.Equal(ItemState.Settled, irish.Items.State("appoint-supervisors"));
        Assert.Contains("supervisor", irish.Words("letter-appointment-ireland"), StringComparison.Ordinal);
        Assert.Equal(ItemState.RuledOut, welsh.Items.State("appoint-supervisors"));
        Assert.DoesNotContain("letter-appointment-ireland", welsh.Pages);
        Assert.Empty(welsh.PagesWith("two supervisors"));
    }

    // A sheet names the publication of each figure, wherever that was published, as the page of sources does.
    private static string WithoutSources(string page, string words) => page is "electrical-sheet" or "ground-sheet"
        ? Content.Guidance.Sources.SelectMany(s => new[] { s.Title.Words, s.Edition, s.Section }).Where(s => s.Length > 0).OrderByDescending(s => s.Length).Aggregate(words, (all, next) => all.Replace(next, "", StringComparison.Ordinal))
        : words;

    private static void Nowhere(string nation, string[] words)
    {
        var home = In(nation);
        var pages = home.PagesOfThisHome.Select(p => (Page: p, Words: WithoutSources(p, home.Words(p)))).ToArray();

        Findings.AreNone(from page in pages
                         from word in words
                         let found = Regex.Match(page.Words, ".{0,40}" + word + ".{0,40}")
                         where found.Success
                         select $"{nation}, {page.Page}: {found.Value}");
    }

    private static Home In(string nation)
    {
        var words = File.ReadAllText(Repository.At("answers/avebury-close.yaml"))
            .Replace("nation: england", "nation: " + nation, StringComparison.Ordinal)
            .Replace("  region: east-and-midlands\n", "", StringComparison.Ordinal);
        return Home.Of(new SourceText("avebury-close.yaml", Encoding.UTF8.GetBytes(words)));
    }
}
