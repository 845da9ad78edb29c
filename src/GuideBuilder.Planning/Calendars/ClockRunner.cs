namespace GuideBuilder.Planning.Calendars;

/// <summary>A time limit as it runs: the day that counts as receipt (day 0) and the day on which it falls due.</summary>
public sealed record ClockReading(LocalDate DayZero, LocalDate Due, DayCount Of, WorkingCalendar Calendar)
{
    /// <summary>How many days late something is that comes, or has not come, by a day: working days of the calendar, or days of the year; 0 when it is in time.</summary>
    public int DaysLate(LocalDate day) => Math.Max(0, Of == DayCount.WorkingDays ? Calendar.Count(Due, day) : Period.DaysBetween(Due, day));
}

/// <summary>
/// Runs the time limits of the standards of performance. The day of receipt is day 0; what comes after five o'clock, or on a day that is not a working day, counts as received on the next working day.
/// Source: Electricity (Standards of Performance) Regulations 2015, SI 2015/699, and the same words in those of Northern Ireland 2013 (from memory for Great Britain).
/// </summary>
public static class ClockRunner
{
    private const decimal HoursInADay = 24;

    /// <summary>The reading of a limit that starts with something received on a day. Limits in days of the year run from the very day; limits in hours fall due on the day in which they end.</summary>
    public static ClockReading Start(LocalDate received, bool afterFive, int limit, DayCount of, WorkingCalendar calendar)
    {
        if (of != DayCount.WorkingDays)
        {
            return new(received, received.PlusDays(of == DayCount.Hours ? (int)decimal.Ceiling(limit / HoursInADay) : limit), of, calendar);
        }

        var zero = calendar.OnOrAfter(afterFive ? received.PlusDays(1) : received);
        return new(zero, calendar.Add(zero, limit), of, calendar);
    }
}
