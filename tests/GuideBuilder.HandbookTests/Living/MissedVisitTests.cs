using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Support;

namespace GuideBuilder.HandbookTests.Living;

/// <summary>What the handbook says on the day after a crew did not come.</summary>
public sealed partial class MissedVisitTests(MissedVisit missed) : IClassFixture<MissedVisit>
{
    [Fact]
    public void The_day_has_a_new_date_after_the_time_in_which_the_crew_can_come_again() =>
        Assert.Contains("The likely day is Wednesday 10 March 2027", Words("the-day.html"), StringComparison.Ordinal);

    [Fact]
    public void What_is_owed_is_told_with_the_day_of_the_text_and_the_letter_to_send()
    {
        var words = Words("if-it-goes-wrong.html");

        Assert.Contains("By 25 February 2027 the published text gives £30. That text is as at 1 January 2016, so ask for the sum now in force.", words, StringComparison.Ordinal);
        Assert.Contains("Due: Wednesday 10 March 2027", words, StringComparison.Ordinal);
        Assert.Contains("Send About a missed visit", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_started_after_five_counts_from_the_next_working_day()
    {
        var words = Words("if-it-goes-wrong.html");

        Assert.Contains("Day 0: Tuesday 8 December 2026", words, StringComparison.Ordinal);
        Assert.Contains("Late by: 4 working days", words, StringComparison.Ordinal);
        Assert.Contains("£60", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cover_leads_to_the_advice_for_the_longer_outage()
    {
        var cover = new HtmlParser().ParseDocument(File.ReadAllText(missed.At("home", "index.html")));

        Assert.Contains(cover.QuerySelectorAll("a"), a => a.GetAttribute("href") == "off-supply.html");
    }

    [Fact]
    public async Task The_plan_on_the_console_says_the_same()
    {
        var plan = await Tool.GuideBuilderAsync("plan", missed.At("home.yaml"), "--today", MissedVisit.Today);

        Assert.Contains("Without supply since 2027-02-24", plan.Output, StringComparison.Ordinal);
        Assert.Contains("Late: day-meter, nobody came on 2027-02-24", plan.Output, StringComparison.Ordinal);
        Assert.Contains("Clock: clock-meter-missed-gb, from 2027-02-24, due 2027-03-10", plan.Output, StringComparison.Ordinal);
        Assert.Contains("Before accept-and-pay: asbestos-result, left open when paid", plan.Output, StringComparison.Ordinal);
    }

    private string Words(string page)
    {
        var body = new HtmlParser().ParseDocument(File.ReadAllText(missed.At("home", page))).Body!;
        return Gaps().Replace(string.Join(' ', body.QuerySelectorAll("h1, h2, h3, h4, p, li, td, th, dt, dd").Where(e => e.QuerySelector("p, li, dt") is null).Select(e => e.TextContent)), " ");
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Gaps();
}
