namespace GuideBuilder.Planning.Calendars;

/// <summary>Makes the calendar of a party from its weekdays, its nation's holidays and the days on which it cannot.</summary>
public static class WorkingCalendars
{
    /// <summary>
    /// A calendar of weekdays less holidays (null for a party that keeps none) less unavailable days. Before the first and after the last day that the list knows,
    /// holidays are closed by rule in the years of the reach; known until stays the list's.
    /// </summary>
    public static WorkingCalendar Of(string id, IEnumerable<IsoDayOfWeek> weekdays, HolidayList? holidays, IEnumerable<LocalDate> unavailable, DateInterval reach) => new(
        id,
        weekdays.ToFrozenSet(),
        unavailable.Concat(holidays is null ? [] : Closed(holidays, reach)).ToFrozenSet(),
        holidays?.KnownUntil ?? LocalDate.MaxIsoValue);

    /// <summary>The same calendar without one weekday and without the days before its closed days: for those who would rather not be left without supply over a weekend or holiday.</summary>
    public static WorkingCalendar AvoidingEves(WorkingCalendar calendar, IsoDayOfWeek weekday) => calendar with
    {
        Id = Invariant($"{calendar.Id}-not-before-days-off"),
        Weekdays = calendar.Weekdays.Where(d => d != weekday).ToFrozenSet(),
        Closed = calendar.Closed.Concat(calendar.Closed.Select(d => d.PlusDays(-1))).ToFrozenSet(),
    };

    private static IEnumerable<LocalDate> Closed(HolidayList holidays, DateInterval reach)
    {
        var byRule = Enumerable.Range(reach.Start.Year, reach.End.Year - reach.Start.Year + 1).SelectMany(y => HolidayRules.Of(holidays.Id, y));
        return holidays.Days.Select(d => d.Date).Concat(byRule.Where(d => d < holidays.KnownFrom || d > holidays.KnownUntil));
    }
}
