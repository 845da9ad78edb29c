namespace GuideBuilder.Model;

/// <summary>The years in which a plan may stand: far enough for any home, near enough that counting on from a day never leaves the calendar.</summary>
public static class Years
{
    /// <summary>The first year of a day that is read.</summary>
    public const int First = 1900;

    /// <summary>The last year of a day that is read.</summary>
    public const int Last = 2199;

    /// <summary>Whether a day lies in one of them.</summary>
    public static bool Has(LocalDate day) => day.Year is >= First and <= Last;
}
