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
            return LocalDatePattern.Iso.Parse(option) is { Success: true } day
                ? day.Value
                : throw new ShellException(ShellFaults.NotADay("--today", option));
        }

        return Environment.GetEnvironmentVariable("SOURCE_DATE_EPOCH") is { Length: > 0 } epoch ? OfEpoch(epoch) : OfClock();
    }

    private static LocalDate OfEpoch(string text) =>
        long.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var seconds) && seconds <= LastSecond
            ? Instant.FromUnixTimeSeconds(seconds).InUtc().Date
            : throw new ShellException(ShellFaults.NotAnEpoch(text));

    private static LocalDate OfClock() => SystemClock.Instance.GetCurrentInstant().InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).Date;

    /// <summary>The last second of the year 9999, beyond which there is no date.</summary>
    private const long LastSecond = 253402300799;
}
