namespace GuideBuilder.Planning.Calendars;

/// <summary>Makes the calendar of a party from its weekdays, its nation's holidays and the days on which it cannot.</summary>
public static class WorkingCalendars
{
    /// <summary>
    /// A calendar of weekdays less holidays (null for a party that keeps none) less unavailable days. Holidays after the list's last known day,
    /// up to the end of a year, are closed by rule; known until stays the list's.
    /// </summary>
    public static WorkingCalendar Of(string id, IEnumerable<IsoDayOfWeek> weekdays, HolidayList? holidays, IEnumerable<LocalDate> unavailable, int lastYear) => new(
        id,
        weekdays.ToFrozenSet(),
        unavailable.Concat(holidays is null ? [] : Closed(holidays, lastYear)).ToFrozenSet(),
        holidays?.KnownUntil ?? LocalDate.MaxIsoValue);

    /// <summary>The same calendar without one weekday and without the days before its closed days: for those who would rather not be left without supply over a weekend or holiday.</summary>
    public static WorkingCalendar AvoidingEves(WorkingCalendar calendar, IsoDayOfWeek weekday) => calendar with
    {
        Id = Invariant($"{calendar.Id}-not-before-days-off"),
        Weekdays = calendar.Weekdays.Where(d => d != weekday).ToFrozenSet(),
        Closed = calendar.Closed.Concat(calendar.Closed.Select(d => d.PlusDays(-1))).ToFrozenSet(),
    };

    private static IEnumerable<LocalDate> Closed(HolidayList holidays, int lastYear)
    {
        var first = holidays.KnownUntil.Year;
        var byRule = Enumerable.Range(first, Math.Max(0, lastYear - first + 1)).SelectMany(y => HolidayRules.Of(holidays.Id, y)).Where(d => d > holidays.KnownUntil);
        return holidays.Days.Select(d => d.Date).Concat(byRule);
    }
}
