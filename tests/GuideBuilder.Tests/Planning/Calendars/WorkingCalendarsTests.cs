using GuideBuilder.Model;
using GuideBuilder.Planning.Calendars;
using GuideBuilder.Tests.Published;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Calendars;

public sealed class WorkingCalendarsTests
{
    private static readonly WorkingCalendar Office = WorkingDayCases.Office("england-and-wales");

    [Fact]
    public void Past_the_table_holidays_are_closed_by_rule_and_known_until_stays_the_tables()
    {
        Assert.False(Office.IsOpen(new(2029, 3, 30)));
        Assert.True(Office.IsOpen(new(2029, 3, 29)));
        Assert.Equal(new(2028, 12, 31), Office.KnownUntil);
    }

    [Fact]
    public void Before_the_table_begins_holidays_are_closed_by_rule_too()
    {
        Assert.False(Office.IsOpen(new(2025, 12, 25)));
        Assert.True(Office.IsOpen(new(2025, 12, 24)));
        Assert.Equal(new(2026, 1, 2), Office.Add(new(2025, 12, 24), 4));
    }

    [Fact]
    public void A_party_that_keeps_no_holidays_is_closed_only_on_its_unavailable_days()
    {
        var household = WorkingCalendars.Of("household", Enumerable.Range(1, 7).Select(d => (IsoDayOfWeek)d), null, [new(2026, 12, 27)], PlanReach.Of(new(2026, 11, 24)));

        Assert.True(household.IsOpen(new(2026, 12, 25)));
        Assert.False(household.IsOpen(new(2026, 12, 27)));
        Assert.Equal(LocalDate.MaxIsoValue, household.KnownUntil);
    }

    [Fact]
    public void Who_would_rather_avoid_a_weekend_without_supply_gets_no_Friday_and_no_eve_of_a_holiday()
    {
        var careful = WorkingCalendars.AvoidingEves(Office, IsoDayOfWeek.Friday);

        Assert.False(careful.IsOpen(new(2026, 4, 10)));
        Assert.False(careful.IsOpen(new(2026, 4, 2)));
        Assert.True(careful.IsOpen(new(2026, 4, 9)));
        Assert.False(careful.IsOpen(new(2026, 12, 24)));
    }

    [Fact]
    public void A_list_without_rules_is_only_its_table() => Assert.Empty(HolidayRules.Of("elsewhere", 2030));
}
