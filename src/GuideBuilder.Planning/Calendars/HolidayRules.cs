namespace GuideBuilder.Planning.Calendars;

/// <summary>
/// Public holidays by rule, for years that no table knows yet. One-off days that are proclaimed cannot be known.
/// Sources: Banking and Financial Dealings Act 1971, sch. 1; Bank Holidays (Scotland) as in the St Andrew's Day Bank Holiday (Scotland) Act 2007;
/// Organisation of Working Time Act 1997 (Ireland), sch. 2. Substitutes follow practice: the next weekday that is no holiday already; in Ireland there are none.
/// </summary>
public static class HolidayRules
{
    private const int January = 1;
    private const int February = 2;
    private const int March = 3;
    private const int May = 5;
    private const int June = 6;
    private const int July = 7;
    private const int August = 8;
    private const int October = 10;
    private const int November = 11;
    private const int December = 12;

    /// <summary>The holidays of a year in order of date, by the id of a holiday list; none for an id without rules.</summary>
    public static ImmutableSortedSet<LocalDate> Of(string list, int year) => list switch
    {
        "england-and-wales" => [.. British(year), .. EasterAndSummer(year), .. Moved([NewYear(year), .. Christmas(year)])],
        "northern-ireland" => [.. British(year), .. EasterAndSummer(year), .. Moved([NewYear(year), new(year, March, 17), new(year, July, 12), .. Christmas(year)])],
        "scotland" => [.. British(year), First(year, August), .. Moved([NewYear(year), new(year, January, 2), new(year, November, 30), .. Christmas(year)])],
        "ireland" => Irish(year),
        _ => [],
    };

    private static LocalDate[] British(int year) => [Easter.Sunday(year).PlusDays(-2), First(year, May), Last(year, May)];

    private static LocalDate[] EasterAndSummer(int year) => [Easter.Sunday(year).PlusDays(1), Last(year, August)];

    private static ImmutableSortedSet<LocalDate> Irish(int year) =>
    [
        NewYear(year), Brigid(year), new(year, March, 17), Easter.Sunday(year).PlusDays(1),
        First(year, May), First(year, June), First(year, August), Last(year, October), .. Christmas(year),
    ];

    private static LocalDate NewYear(int year) => new(year, January, 1);

    private static LocalDate[] Christmas(int year) => [new(year, December, 25), new(year, December, 26)];

    /// <summary>The first Monday of February, or the first of February where that is a Friday.</summary>
    private static LocalDate Brigid(int year) =>
        new LocalDate(year, February, 1) is { DayOfWeek: IsoDayOfWeek.Friday } friday ? friday : First(year, February);

    private static LocalDate First(int year, int month) => Monday(new LocalDate(year, month, 1).PlusDays(-1));

    private static LocalDate Last(int year, int month) => Monday(new LocalDate(year, month, 1).PlusMonths(1).PlusDays(-8));

    private static LocalDate Monday(LocalDate after) => after.Next(IsoDayOfWeek.Monday);

    /// <summary>Days of fixed date, those at a weekend moved on, in order, to the next weekday that is not taken.</summary>
    private static HashSet<LocalDate> Moved(LocalDate[] days)
    {
        var taken = days.Where(d => !IsWeekend(d)).ToHashSet();
        foreach (var day in days.Where(IsWeekend))
        {
            var moved = day;
            while (IsWeekend(moved) || taken.Contains(moved))
            {
                moved = moved.PlusDays(1);
            }

            taken.Add(moved);
        }

        return taken;
    }

    private static bool IsWeekend(LocalDate day) => day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday;
}
