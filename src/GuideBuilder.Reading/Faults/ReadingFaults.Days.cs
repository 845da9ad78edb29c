namespace GuideBuilder.Reading;

internal static partial class ReadingFaults
{
    /// <summary>A happening that lies ahead. Example: <c>on: 2027-03-01</c> in a log that is read on 2027-02-25.</summary>
    public static Fault NotYet(Place place, LocalDate on, LocalDate today) =>
        Error("HB1110", place, Invariant($"{on:uuuu-MM-dd} lies ahead: today is {today:uuuu-MM-dd}."), "The log says what has happened. A day that a company has promised is written what: date-given, with on: the day on which it was promised, and date: the promised day.");

    /// <summary>A day that no plan reaches. Example: <c>needed-by: 2127-03-15</c>.</summary>
    public static Fault TooFarOff(Place place, LocalDate day, DateInterval reach) =>
        Error("HB1111", place, Invariant($"{day:uuuu-MM-dd} is too far off for a plan."), Invariant($"Check the year: a plan of today reaches from {reach.Start:uuuu-MM-dd} to {reach.End:uuuu-MM-dd}."));

    /// <summary>So many days that no year has them. Example: <c>away: [2027-01-01 to 2029-01-01]</c>.</summary>
    public static Fault MoreThanAYear(Place place, string text, long days, int most) =>
        Error("HB1112", place, Invariant($"With `{Shown(text)}` the days come to {days}, more than a year has."), Invariant($"Write the days of the next twelve months, {most} at most, such as 2027-02-10 to 2027-02-14."));

    /// <summary>Holidays that the list does not know for today. Example: <c>known-until: 2028-12-31</c>, read in 2029. A warning.</summary>
    public static Fault HolidaysByRule(Place place, LocalDate from, LocalDate until) =>
        new("HB1113", Severity.Warning, place, Invariant($"These holidays are known from {from:uuuu-MM-dd} to {until:uuuu-MM-dd}; today lies outside, so they are counted by rule."), "Add the days that have been proclaimed since, and move known-until.");
}
