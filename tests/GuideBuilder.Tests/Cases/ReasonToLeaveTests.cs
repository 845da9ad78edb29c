using System.Text.RegularExpressions;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>For each crew, the reasons for which it would leave, each with a check, somebody whose check it is, and a time.</summary>
public sealed partial class ReasonToLeaveTests
{
    private const string All = "home: {nation: england}\nintake: {asbestos-board: yes, looped: yes}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\nworks: {kinds: [gas-moved]}";

    [Theory]
    [InlineData("Network operator", 10)]
    [InlineData("Meter operator", 10)]
    [InlineData("Electrician", 6)]
    [InlineData("Gas", 5)]
    public void A_crew_has_so_many_and_each_is_somebodys_to_check_in_time(string crew, int least)
    {
        var rows = Rows(crew);

        Assert.True(rows.Count >= least, $"{crew}: {rows.Count}");
        Assert.Equal(rows.Count, rows.Select(r => r[0]).Distinct(StringComparer.Ordinal).Count());
        Assert.All(rows, r => Assert.Equal(4, r.Count(c => c.Length > 0)));
    }

    [Fact]
    public void A_home_is_told_only_of_those_that_it_can_have()
    {
        var home = Home.Given("home: {nation: ireland}\nintake: {service: underground, asbestos-board: no, fixed-to: wall, looped: no, second-cable: no, carriers: one}\nwish: {moves: [meter]}\nplace: {kind: same-wall}\nworks: {kinds: none}").Words("the-day");

        Assert.Contains("The networks business, at the meter", home, StringComparison.Ordinal);
        Assert.All(["The duct is wrong", "The neighbour on the loop", "The pipe is of mixed metals", "The cabinet is loose"], w => Assert.DoesNotContain(w, home, StringComparison.Ordinal));
    }

    // The rows of the table under the heading of the crew, as the page is written.
    private static List<string[]> Rows(string crew)
    {
        var page = Home.Given(All).Files["the-day.html"];
        var from = page.IndexOf($">{crew}</h3>", StringComparison.Ordinal);
        Assert.True(from > 0, crew);
        var table = page[from..page.IndexOf("</table>", from, StringComparison.Ordinal)];
        return [.. Row().Matches(table).Select(r => Cell().Matches(r.Value).Select(c => c.Groups[1].Value.Trim()).ToArray()).Where(c => c.Length > 0)];
    }

    [GeneratedRegex("<tr.*?</tr>", RegexOptions.Singleline)]
    private static partial Regex Row();

    [GeneratedRegex("<t(?:d|h scope=\"row\")[^>]*>(.*?)</t[dh]>", RegexOptions.Singleline)]
    private static partial Regex Cell();
}
