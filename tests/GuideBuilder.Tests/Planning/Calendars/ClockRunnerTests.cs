using GuideBuilder.Model;
using GuideBuilder.Planning.Calendars;
using GuideBuilder.Tests.Published;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Calendars;

public sealed class ClockRunnerTests
{
    private static readonly WorkingCalendar Office = WorkingDayCases.Office("england-and-wales");

    [Theory]
    [InlineData(1, false, 1)]
    [InlineData(1, true, 2)]
    [InlineData(2, true, 7)]
    [InlineData(4, false, 7)]
    [InlineData(4, true, 7)]
    public void What_comes_late_or_on_a_day_off_counts_from_the_next_working_day(int day, bool afterFive, int zero) =>
        Assert.Equal(new(2026, 4, zero), ClockRunner.Start(new(2026, 4, day), afterFive, 5, DayCount.WorkingDays, Office).DayZero);

    [Fact]
    public void Days_of_the_year_run_from_the_very_day()
    {
        var reading = ClockRunner.Start(new(2026, 4, 4), true, 30, DayCount.CalendarDays, Office);

        Assert.Equal((new LocalDate(2026, 4, 4), new LocalDate(2026, 5, 4)), (reading.DayZero, reading.Due));
        Assert.Equal(6, reading.DaysLate(new(2026, 5, 10)));
    }

    [Theory]
    [InlineData(12, 5)]
    [InlineData(24, 5)]
    [InlineData(25, 6)]
    public void Hours_fall_due_on_the_day_in_which_they_may_end(int hours, int day) =>
        Assert.Equal(new(2026, 4, day), ClockRunner.Start(new(2026, 4, 4), false, hours, DayCount.Hours, Office).Due);
}
