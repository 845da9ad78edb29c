namespace GuideBuilder.Planning.Calendars;

/// <summary>Easter Sunday in the Gregorian calendar.</summary>
public static class Easter
{
    /// <summary>Easter Sunday of a year from 1583 on, by the anonymous Gregorian algorithm. Source: Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 8.</summary>
    public static LocalDate Sunday(int year)
    {
        var (golden, century, inCentury) = (year % 19, year / 100, year % 100);
        var correction = (century - ((century + 8) / 25) + 1) / 3;
        var epact = ((19 * golden) + century - (century / 4) - correction + 15) % 30;
        var weekday = (32 + (2 * (century % 4)) + (2 * (inCentury / 4)) - epact - (inCentury % 4)) % 7;
        var late = (golden + (11 * epact) + (22 * weekday)) / 451;
        var fromMarch = epact + weekday - (7 * late) + 114;
        return new(year, fromMarch / 31, (fromMarch % 31) + 1);
    }
}
