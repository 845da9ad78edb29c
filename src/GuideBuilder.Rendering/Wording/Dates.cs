namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes dates with the names of labels.yaml. The public edition has no calendar dates: it counts weeks from the first day of the plan.</summary>
internal sealed class Dates
{
    private static readonly ImmutableArray<string> Months =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private readonly Phrases _phrases;
    private readonly LocalDate? _weeksFrom;

    internal Dates(Phrases phrases, LocalDate? weeksFrom) => (_phrases, _weeksFrom) = (phrases, weeksFrom);

    /// <summary>Thursday 23 April 2026.</summary>
    internal string Long(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : $"{Weekday(day)} {Short(day)}";

    /// <summary>23 April 2026.</summary>
    internal string Short(LocalDate day) => _weeksFrom is { } from ? Week(from, day) : Invariant($"{day.Day} {Month(day)} {day.Year}");

    /// <summary>April.</summary>
    internal string Month(LocalDate day) => _phrases.Say($"month-{Months[day.Month - 1]}");

    /// <summary>The long form as an inline that a machine can read too.</summary>
    internal Phrase Say(LocalDate day) => Marked(day, Long(day));

    /// <summary>The short form as an inline that a machine can read too.</summary>
    internal Phrase SayShort(LocalDate day) => Marked(day, Short(day));

    /// <summary>From an early to a late day, or the one day.</summary>
    internal Phrase Range(DateRange range) => Span(range.Early, range.Late);

    /// <summary>From the first to the last day, or the one day.</summary>
    internal Phrase Span(LocalDate first, LocalDate last) =>
        first == last ? Say(first) : _phrases.Compose("range-dates", ("from", SayShort(first)), ("to", SayShort(last)));

    private string Weekday(LocalDate day) => _phrases.Say($"weekday-{day.DayOfWeek.ToString().ToLowerInvariant()}");

    private string Week(LocalDate from, LocalDate day)
    {
        var days = Period.DaysBetween(from, day);
        return _phrases.Say("week-number", ("n", Invariant($"{(days < 0 ? 0 : (days / 7) + 1)}")));
    }

    private Phrase Marked(LocalDate day, string words) => _weeksFrom is null ? Phrase.Of(new Inline.Date(day, words)) : Phrase.Of(words);
}
