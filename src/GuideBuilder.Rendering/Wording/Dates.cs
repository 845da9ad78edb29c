namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes dates with the names of labels.yaml. The public edition has no calendar dates: it counts weeks from the day on which the application is sent.</summary>
internal sealed class Dates
{
    private readonly Phrases _phrases;
    private readonly LocalDate? _weeksFrom;

    internal Dates(Phrases phrases, LocalDate? weeksFrom) => (_phrases, _weeksFrom) = (phrases, weeksFrom);

    /// <summary>Thursday 23 April 2026.</summary>
    internal string Long(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : $"{Weekday(day)} {Short(day)}";

    /// <summary>23 April 2026.</summary>
    internal string Short(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : Invariant($"{day.Day} {Month(day)} {day.Year}");

    /// <summary>A day of the guidance itself, when it was edited or read: the day, or in the public edition its month.</summary>
    internal string OfGuidance(LocalDate day) => _weeksFrom is null ? Short(day) : Invariant($"{Month(day)} {day.Year}");

    /// <summary>The same as an inline.</summary>
    internal Phrase SayOfGuidance(LocalDate day) => _weeksFrom is null ? Say(day) : Phrase.Of(OfGuidance(day));

    /// <summary>April.</summary>
    internal string Month(LocalDate day) => _phrases.Say(Invariant($"month-{day.Month}"));

    /// <summary>The day and the short name of its month, for narrow places in drawings.</summary>
    internal string Tight(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : Invariant($"{day.Day} {MonthShort(day)}");

    /// <summary>Apr; in the public edition the number of its week.</summary>
    internal string MonthShort(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : _phrases.Say(Invariant($"month-short-{day.Month}"));

    /// <summary>The long form as an inline that a machine can read too.</summary>
    internal Phrase Say(LocalDate day) => Marked(day, Long(day));

    /// <summary>The short form as an inline that a machine can read too.</summary>
    internal Phrase SayShort(LocalDate day) => Marked(day, Short(day));

    /// <summary>From an early to a late day, or the one day.</summary>
    internal Phrase Range(DateRange range) => Span(range.Early, range.Late);

    /// <summary>From the first to the last day, or the one day.</summary>
    internal Phrase Span(LocalDate first, LocalDate last) =>
        first == last ? Say(first) : _phrases.Compose("from-to", ("0", Marked(first, Before(first, last))), ("1", SayShort(last)));

    // The first day leaves out the month and the year that the last day says.
    private string Before(LocalDate first, LocalDate last) =>
        _weeksFrom is not null || first.Year != last.Year ? Short(first)
        : first.Month == last.Month ? Invariant($"{first.Day}")
        : Invariant($"{first.Day} {Month(first)}");

    private string Weekday(LocalDate day) => _phrases.Say(Invariant($"weekday-{(int)day.DayOfWeek}"));

    private string Week(LocalDate from, LocalDate day)
    {
        var days = Period.DaysBetween(from, day);
        return days < 0 ? _phrases.Say("week-before") : _phrases.Say("week-of-plan", ("0", Invariant($"{(days / 7) + 1}")));
    }

    private Phrase Marked(LocalDate day, string words) => _weeksFrom is null ? Phrase.Of(new Inline.Date(day, words)) : Phrase.Of(words);
}
