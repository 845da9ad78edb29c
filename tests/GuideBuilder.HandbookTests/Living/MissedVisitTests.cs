using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using GuideBuilder.HandbookTests.Pages;
using GuideBuilder.HandbookTests.Support;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.HandbookTests.Living;

/// <summary>What the handbook says on the day after a crew did not come.</summary>
public sealed partial class MissedVisitTests(MissedVisit missed) : IClassFixture<MissedVisit>
{
    [Fact]
    public void The_cover_says_where_you_are_what_is_late_and_what_is_next_by_when()
    {
        var cover = Words("index.html");

        Assert.Contains("44 of 72 steps are done", cover, StringComparison.Ordinal);
        Assert.Contains("The house has been without supply since Wednesday 24 February 2027", cover, StringComparison.Ordinal);
        Assert.Contains("nobody came on Wednesday 24 February 2027, 1 calendar day ago", cover, StringComparison.Ordinal);
        Assert.Contains("Clear the way for every crew, by Thursday 25 February 2027 at the latest", cover, StringComparison.Ordinal);
        Assert.Contains("What to do next Have the supply put back", cover, StringComparison.Ordinal);
        Assert.Contains("Hours without electricity since Wednesday 24 February 2027, until the meter is connected and tested", cover, StringComparison.Ordinal);
        Assert.DoesNotContain("of our trial runs of this plan met it", cover, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_gate_that_was_left_open_is_named_beside_the_payment()
    {
        var cover = Words("index.html");
        var taken = cover[cover.IndexOf("You have paid, with these left open", StringComparison.Ordinal)..cover.IndexOf("What could hurt you", StringComparison.Ordinal)];

        Assert.Contains("£2,140", taken, StringComparison.Ordinal);
        Assert.All(["The asbestos result comes back", "The neighbour says yes, in writing", "Settle who can reach the meter"], words => Assert.Contains(words, taken, StringComparison.Ordinal));
        Assert.DoesNotContain("Check what the quotation leaves out", taken, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_only_have_been_done_is_not_done_again()
    {
        var day = Words("the-day.html");
        var timetable = day[..day.IndexOf("Before they ring the bell", StringComparison.Ordinal)];

        Assert.DoesNotContain("uncovers the cable", timetable, StringComparison.Ordinal);
        Assert.Contains("The meter operator connects the meter", timetable, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_as_data_says_the_same()
    {
        using var plan = JsonDocument.Parse(File.ReadAllText(missed.At("home", "plan.json")));
        var where = plan.RootElement.GetProperty("where");
        var clock = where.GetProperty("clocks").EnumerateArray().Single(c => c.GetProperty("clock").GetString() == "clock-meter-missed-gb");
        var dropOut = plan.RootElement.GetProperty("meetings")[0].GetProperty("drop-outs").EnumerateArray().Single(d => d.GetProperty("party").GetString() == "meter-operator");

        Findings.AreNone(DataTests.Against(missed.At("home", "plan-schema.json"), plan));
        Assert.Equal("2027-02-24", where.GetProperty("without-supply-since").GetString());
        Assert.Equal(("day-meter", "missed", 1), where.GetProperty("late")[0] is var late ? (late.GetProperty("step").GetString(), late.GetProperty("because").GetString(), late.GetProperty("days").GetInt32()) : default);
        Assert.Contains(where.GetProperty("next").EnumerateArray(), n => (n.GetProperty("step").GetString(), n.GetProperty("by").GetString()) == ("clear-access", "2027-02-25"));
        Assert.Equal((30, "2016-01-01"), (clock.GetProperty("owed").GetProperty("amount").GetDecimal(), clock.GetProperty("owed").GetProperty("as-at").GetString()));
        Assert.Contains(where.GetProperty("gates").EnumerateArray(), g => (g.GetProperty("step").GetString(), g.GetProperty("state").GetString()) == ("asbestos-result", "left-open"));
        Assert.Equal(("electrician", "2027-03-24"), (dropOut.GetProperty("call-off")[0].GetProperty("party").GetString(), dropOut.GetProperty("next-day").GetString()));
    }

    [Fact]
    public void The_day_has_a_new_date_after_the_time_in_which_the_crew_can_come_again() =>
        Assert.Contains("The day in this plan is Wednesday 10 March 2027", Words("the-day.html"), StringComparison.Ordinal);

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
        Assert.Contains("If meter-operator drops out of works-day: call off electrician by 2027-03-08", plan.Output, StringComparison.Ordinal);
    }

    private string Words(string page)
    {
        var body = new HtmlParser().ParseDocument(File.ReadAllText(missed.At("home", page))).Body!;
        return Gaps().Replace(string.Join(' ', body.QuerySelectorAll("h1, h2, h3, h4, p, li, td, th, dt, dd").Where(e => e.QuerySelector("p, li, dt") is null).Select(e => e.TextContent)), " ");
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Gaps();
}
