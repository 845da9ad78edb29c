namespace GuideBuilder.Planning.Steps;

/// <summary>What the log says of a step: the day on which it was done, or else the date last given for it.</summary>
internal sealed record Pin(LocalDate? Done, LocalDate? Given);

/// <summary>Reads the log in the order in which things happened.</summary>
internal static class LogPins
{
    /// <summary>The pins by step id. Something missed or refused makes the date void, for the whole meeting; what is done stays done.</summary>
    public static FrozenDictionary<string, Pin> Of(IEnumerable<LogEvent> log, IReadOnlyList<Step> steps)
    {
        var pins = new Dictionary<string, Pin>(StringComparer.Ordinal);
        foreach (var entry in log.OrderBy(e => e.On))
        {
            foreach (var step in Touched(entry, steps))
            {
                pins[step.Id] = After(entry, pins.GetValueOrDefault(step.Id) ?? new(null, null));
            }
        }

        return pins.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static Pin After(LogEvent entry, Pin pin) => entry.What switch
    {
        LogKind.DateGiven => pin with { Given = entry.DateGiven },
        LogKind.Missed => pin with { Given = null },
        LogKind.Refused => new(null, null),
        LogKind.Noted => pin,
        _ => pin with { Done = entry.On },
    };

    // An entry that names a party and no step speaks of that party's turn in a meeting.
    private static IEnumerable<Step> Touched(LogEvent entry, IReadOnlyList<Step> steps)
    {
        var named = steps.Where(s => entry.Step is { } id ? s.Id == id : entry.What is LogKind.DateGiven or LogKind.Missed && s.Meeting is not null && s.Party == entry.Party).ToArray();
        return entry.What == LogKind.Missed ? steps.Where(s => named.Contains(s) || (s.Meeting is not null && named.Any(n => n.Meeting == s.Meeting))) : named;
    }
}
