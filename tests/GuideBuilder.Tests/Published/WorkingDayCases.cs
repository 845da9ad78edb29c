using GuideBuilder.Model;
using GuideBuilder.Planning.Calendars;
using NodaTime;

namespace GuideBuilder.Tests.Published;

/// <summary>Working-day sums on the holidays of 2026 to 2028, receipt being day 0. All derived by hand from the lists. More stand among the checks on regulation.</summary>
public sealed class WorkingDayCases
{
    private static readonly DateInterval Reach = new(new(2023, 1, 1), new(2030, 12, 31));

    [Theory]
    [InlineData("england-and-wales", "2026-04-02", 1, "2026-04-07")]
    [InlineData("england-and-wales", "2026-04-02", 5, "2026-04-13")]
    [InlineData("england-and-wales", "2026-04-02", 10, "2026-04-20")]
    [InlineData("england-and-wales", "2026-12-24", 1, "2026-12-29")]
    [InlineData("england-and-wales", "2026-12-24", 3, "2026-12-31")]
    [InlineData("england-and-wales", "2027-12-24", 1, "2027-12-29")]
    [InlineData("england-and-wales", "2026-03-02", 65, "2026-06-05")]
    [InlineData("england-and-wales", "2026-03-30", 20, "2026-04-29")]
    [InlineData("england-and-wales", "2026-03-30", 65, "2026-07-03")]
    public void So_many_working_days_after_receipt_is(string list, string received, int days, string due) =>
        Assert.Equal(Date(due), ClockRunner.Start(Date(received), false, days, DayCount.WorkingDays, Office(list)).Due);

    [Theory]
    [InlineData("2026-04-01", "2026-04-30", 20)]
    [InlineData("2026-12-01", "2026-12-31", 21)]
    [InlineData("2026-01-01", "2026-12-31", 253)]
    [InlineData("2027-01-01", "2027-12-31", 253)]
    public void The_open_days_of_a_month_or_year_number(string first, string last, int days) =>
        Assert.Equal(days, Office("england-and-wales").Count(Date(first).PlusDays(-1), Date(last)));

    [Fact]
    public void A_quotation_due_on_a_Friday_and_sent_on_the_Wednesday_after_is_three_working_days_late()
    {
        var reading = ClockRunner.Start(new(2026, 4, 1), false, 5, DayCount.WorkingDays, Office("england-and-wales"));

        Assert.Equal(new(2026, 4, 10), reading.Due);
        Assert.Equal(3, reading.DaysLate(new(2026, 4, 15)));
        Assert.Equal(0, reading.DaysLate(new(2026, 4, 10)));
    }

    public static WorkingCalendar Office(string list) => WorkingCalendars.Of(
        list,
        Enumerable.Range(1, 5).Select(d => (IsoDayOfWeek)d),
        new(list, [.. HolidayTables.Of(list).Select(d => new Holiday(d, LocalText.Empty))], new(2028, 12, 31), new([], Mark.Read, null, null), Place.None),
        [],
        Reach);

    private static LocalDate Date(string text) => NodaTime.Text.LocalDatePattern.Iso.Parse(text).Value;
}
