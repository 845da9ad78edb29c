using System.Globalization;
using System.Text.RegularExpressions;

namespace GuideBuilder.Reading;

/// <summary>Dates and spans of dates, written year-month-day.</summary>
internal static partial class Dates
{
    /// <summary>The date in a text, or null with the fault added.</summary>
    public static LocalDate? Read(string text, Place place, FaultList faults)
    {
        if (!Shape().IsMatch(text))
        {
            faults.Add(ReadingFaults.NotADate(place, text));
            return null;
        }

        var (year, month, day) = (Part(text[..4]), Part(text[5..7]), Part(text[8..]));
        if (year is < Years.First or > Years.Last || month is < 1 or > 12 || day < 1 || day > CalendarSystem.Iso.GetDaysInMonth(year, month))
        {
            faults.Add(ReadingFaults.NoSuchDate(place, text, Years.First, Years.Last));
            return null;
        }

        return new(year, month, day);
    }

    /// <summary>One day, or a span written <c>2027-02-10 to 2027-02-14</c>; null with the fault added.</summary>
    public static DateInterval? ReadSpan(string text, Place place, FaultList faults)
    {
        var ends = text.Split(" to ");
        if (ends.Length > 2)
        {
            faults.Add(ReadingFaults.NotADate(place, text));
            return null;
        }

        var first = Read(ends[0].Trim(), place, faults);
        var last = ends.Length == 1 ? first : Read(ends[1].Trim(), place, faults);
        if (first is null || last is null)
        {
            return null;
        }

        if (last < first)
        {
            faults.Add(ReadingFaults.SpanBackwards(place, text));
            return null;
        }

        return new(first.Value, last.Value);
    }

    private static int Part(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\A[0-9]{4}-[0-9]{2}-[0-9]{2}\z")]
    private static partial Regex Shape();
}
