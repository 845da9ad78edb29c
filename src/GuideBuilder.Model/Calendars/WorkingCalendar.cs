namespace GuideBuilder.Model;

/// <summary>The days on which a party works: weekdays, less closed days. Known until the last day for which closed days are certain; later days count as weekdays say.</summary>
public sealed record WorkingCalendar(string Id, FrozenSet<IsoDayOfWeek> Weekdays, FrozenSet<LocalDate> Closed, LocalDate KnownUntil)
{
    /// <summary>Every day of the year: what a household may use, and what calendar days count.</summary>
    public static WorkingCalendar EveryDay { get; } = new("every-day", Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None).ToFrozenSet(), FrozenSet<LocalDate>.Empty, LocalDate.MaxIsoValue);

    /// <summary>Whether work is done that day.</summary>
    public bool IsOpen(LocalDate day) => Weekdays.Contains(day.DayOfWeek) && !Closed.Contains(day);

    /// <summary>The first open day on or after a day. A calendar without open weekdays is our own mistake and does not end.</summary>
    public LocalDate OnOrAfter(LocalDate day)
    {
        while (!IsOpen(day))
        {
            day = day.PlusDays(1);
        }

        return day;
    }

    /// <summary>The last open day on or before a day.</summary>
    public LocalDate OnOrBefore(LocalDate day)
    {
        while (!IsOpen(day))
        {
            day = day.PlusDays(-1);
        }

        return day;
    }

    /// <summary>The n-th open day strictly after a day (strictly before it when n is negative); the day itself when n is 0.</summary>
    public LocalDate Add(LocalDate day, int openDays)
    {
        var step = Math.Sign(openDays);
        for (var left = Math.Abs(openDays); left > 0; left -= IsOpen(day) ? 1 : 0)
        {
            day = day.PlusDays(step);
        }

        return day;
    }

    /// <summary>How many open days lie after the first and up to and including the last; negative when the last comes first.</summary>
    public int Count(LocalDate first, LocalDate last)
    {
        if (last < first)
        {
            return -Count(last, first);
        }

        var count = 0;
        for (var day = first.PlusDays(1); day <= last; day = day.PlusDays(1))
        {
            count += IsOpen(day) ? 1 : 0;
        }

        return count;
    }
}
