using GuideBuilder.Model;
using GuideBuilder.Rendering;
using GuideBuilder.Rendering.Wording;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Rendering;

public sealed class WordingTests
{
    private static readonly Phrases Said = new(Labels.Real, new FaultList());

    private static readonly Dates Dates = new(Said, null);

    private static readonly GuideBuilder.Rendering.Wording.Ranges Ranges = new(Said);

    [Fact]
    public void Dates_are_written_out() => Assert.Equal("Thursday 23 April 2026", Dates.Long(new(2026, 4, 23)));

    [Theory]
    [InlineData("15.5", "hours", "16 hours")]
    [InlineData("0.675", "m", "675 mm")]
    [InlineData("0.8671", "m", "870 mm")]
    [InlineData("2.911", "m", "2.9 m")]
    [InlineData("1.25", "m", "1.25 m")]
    [InlineData("4218", "kg", "4.2 t")]
    [InlineData("3.374", "t", "3.4 t")]
    [InlineData("0.713", "m³", "0.71 m³")]
    [InlineData("8.85", "m³", "8.9 m³")]
    public void Rough_quantities_are_in_no_more_places_than_they_are_worth(string amount, string unit, string words) =>
        Assert.Equal(words, Figures.Handy(new(Number(amount), Unit.Of(unit))).ToString());

    [Theory]
    [InlineData("13.12", "15.31", "26.24", "from 13 to 27 hours, most likely 15")]
    [InlineData("1.5", "2", "3", "from 1½ to 3 hours, most likely 2")]
    [InlineData("0.3", "0.5", "1", "from 0.3 to 1 hour, most likely ½")]
    public void Hours_of_work_are_no_finer_than_anybody_counts_them(string low, string likely, string high, string words) =>
        Assert.Equal(words, Ranges.Hours(Figures.Work(ThreePoint.Of(Number(low), Number(likely), Number(high))!)));

    [Theory]
    [InlineData("2026-04-23", "2026-04-23", "Thursday 23 April 2026")]
    [InlineData("2026-04-23", "2026-04-25", "from 23 to 25 April 2026")]
    [InlineData("2026-04-23", "2026-05-02", "from 23 April to 2 May 2026")]
    [InlineData("2026-12-23", "2027-01-02", "from 23 December 2026 to 2 January 2027")]
    public void Spans_say_each_part_of_a_date_once(string first, string last, string words) =>
        Assert.Equal(words, Dates.Span(Day(first), Day(last)).PlainWords);

    [Theory]
    [InlineData("2026-11-24", "Week 1")]
    [InlineData("2026-11-30", "Week 1")]
    [InlineData("2026-12-01", "Week 2")]
    [InlineData("2026-11-23", "Before you apply")]
    public void The_public_edition_counts_weeks(string day, string words) => Assert.Equal(words, new Dates(Said, Sample.Today).Long(Day(day)));

    [Theory]
    [InlineData("1180", "£1,180")]
    [InlineData("1180.5", "£1,180.50")]
    [InlineData("0", "£0")]
    [InlineData("-12.25", "−£12.25")]
    public void Sums_are_exact_to_the_penny(string sum, string words) => Assert.Equal(words, Figures.Exact(Number(sum), Unit.Of("£")));

    [Theory]
    [InlineData("1180.49", "£1,180")]
    [InlineData("1180.5", "£1,181")]
    public void Ranges_of_money_are_in_whole_pounds(string sum, string words) => Assert.Equal(words, Figures.Rough(Number(sum), Unit.Of("£")));

    [Theory]
    [InlineData(1, 2, 4, "from 1 to 4 hours, most likely 2")]
    [InlineData(1, 1, 4, "from 1 to 4 hours")]
    [InlineData(1, 1, 1, "1 hour")]
    [InlineData(3, 3, 3, "3 hours")]
    public void Ranges_run_from_a_low_to_a_high(int low, int likely, int high, string words) => Assert.Equal(words, Ranges.Hours(ThreePoint.Of(low, likely, high)!));

    [Fact]
    public void A_label_that_is_missing_is_a_fault()
    {
        var faults = new FaultList();

        Assert.Equal("nobody", new Phrases(Labels.Real, faults).Say("nobody"));
        Assert.Equal("HB3010", Assert.Single(faults.All).Code);
    }

    private static LocalDate Day(string day) => NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;

    private static decimal Number(string number) => decimal.Parse(number, System.Globalization.CultureInfo.InvariantCulture);
}
