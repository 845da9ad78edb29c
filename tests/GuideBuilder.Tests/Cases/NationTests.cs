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

    // The sources and the words of every nation, each under its own name; the numbers are looked for in these too.
    private static readonly string[] Explains = ["sources-page", "glossary-page"];

    // Pages that name publications beside what rests on them.
    private static readonly string[] Cites = ["electrical-sheet", "ground-sheet", "how-this-was-worked-out", "index-page", "what-changes-less"];

    private const string Priced = "  region: east-and-midlands\n";

    // Where the law, and not only a body's name, is another one in Wales: the two pages of building control, and those that repeat or list their words.
    private static readonly string[] WelshLaw = ["building-control", "consents-and-certificates", "how-this-was-worked-out", "whose-is-it"];

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

    [Theory]
    [InlineData("england", "03457 643 643")]
    [InlineData("wales", "1800 372 999")]
    [InlineData("scotland", "03457 643 643")]
    [InlineData("northern-ireland", "0800 111 999")]
    [InlineData("ireland", "0800 111 999")]
    public void The_number_of_another_nation_stands_in_no_file_at_all(string nation, string number)
    {
        var files = In(nation).Files;

        Assert.True(files.Count > 100);
        Findings.AreNone(files.Where(f => f.Value.Contains(number, StringComparison.Ordinal)).Select(f => f.Key));
        Findings.AreNone(nation is "northern-ireland" or "ireland" ? files.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal) && Regex.IsMatch(WithoutSources(Text(f.Value)), @"(?<![\d.£€])105(?![\d.]|-)")).Select(f => f.Key) : []);
    }

    [Fact]
    public void Wales_reads_as_England_but_where_its_bodies_and_its_law_differ()
    {
        // Priced as one part of the country, because prices differ by region and not by law.
        var (english, welsh) = (In("england", Priced), In("wales", Priced));

        Assert.Equal(english.Pages.Select(p => Renamed(p)), welsh.Pages.Select(p => Renamed(p)));
        Assert.Equal(WelshLaw, english.Pages.Intersect(welsh.Pages).Where(p => Plain(english, p) != Plain(welsh, p)).Order(StringComparer.Ordinal));
    }

    // The notice to building control is a page of its own in each.
    private static string Renamed(string page) => page.Replace("-england", "", StringComparison.Ordinal).Replace("-wales", "", StringComparison.Ordinal);

    // The words of a page with each body of the nation under its name, and neither nation by its own.
    private static string Plain(Home home, string page) =>
        home.Plan.Nation.Bodies.OrderByDescending(b => b.Value.Words.Length).ThenBy(b => b.Key, StringComparer.Ordinal)
            .Aggregate(home.Words(page), (words, body) => words.Replace(body.Value.Words, "{" + body.Key + "}", StringComparison.Ordinal))
            .Replace("England", "{nation}", StringComparison.Ordinal).Replace("Wales", "{nation}", StringComparison.Ordinal);

    private static string Text(string html) => Regex.Replace(html, "<(script|style|svg)[^>]*>.*?</\\1>|<[^>]+>", " ", RegexOptions.Singleline);

    // A sheet names the publication of each figure, wherever that was published, as the page of sources and the reasons do.
    private static string WithoutSources(string words) => Titles.Aggregate(words, (all, next) => all.Replace(next, "", StringComparison.Ordinal));

    private static readonly string[] Titles = [.. Content.Guidance.Sources.SelectMany(s => new[] { s.Title.Words, s.Publisher, s.Edition, s.Section }).Where(s => s.Length > 0).OrderByDescending(s => s.Length)];

    private static void Nowhere(string nation, string[] words)
    {
        var home = In(nation);
        var pages = home.Pages.Except(Explains).Select(p => (Page: p, Words: Cites.Contains(p) ? WithoutSources(home.Words(p)) : home.Words(p))).ToArray();

        Findings.AreNone(from page in pages
                         from word in words
                         let found = Regex.Match(page.Words, ".{0,40}" + word + ".{0,40}")
                         where found.Success
                         select $"{nation}, {page.Page}: {found.Value}");
    }

    private static Home In(string nation, string region = "")
    {
        var words = File.ReadAllText(Repository.At("answers/avebury-close.yaml"))
            .Replace("nation: england", "nation: " + nation, StringComparison.Ordinal)
            .Replace(Priced, region, StringComparison.Ordinal);
        return Home.Of(new SourceText("avebury-close.yaml", Encoding.UTF8.GetBytes(words)));
    }
}
