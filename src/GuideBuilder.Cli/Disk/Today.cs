using NodaTime.Text;

namespace GuideBuilder.Cli.Disk;

/// <summary>The day a run takes place: asked once, then an argument.</summary>
internal static class Today
{
    /// <summary>The day in --today; else that of SOURCE_DATE_EPOCH (seconds since 1970-01-01, UTC); else the clock's in London, where most readers of the calendar are.</summary>
    internal static LocalDate Find(string? option)
    {
        if (option is not null)
        {
            return LocalDatePattern.Iso.Parse(option) is { Success: true } day && Years.Has(day.Value)
                ? day.Value
                : throw new ShellException(ShellFaults.NotADay("--today", option));
        }

        return Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH") is { Length: > 0 } epoch ? OfEpoch(epoch) : OfClock();
    }

    private static LocalDate OfEpoch(string text) =>
        long.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var seconds) && seconds < FarSecond && Instant.FromUnixTimeSeconds(seconds).InUtc().Date is var day && Years.Has(day)
            ? day
            : throw new ShellException(ShellFaults.NotAnEpoch(text));

    private static LocalDate OfClock() => SystemClock.Instance.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).Date;

    /// <summary>The first second of the year 10000, from which there is no date.</summary>
    private const long FarSecond = 253402300800;
}
