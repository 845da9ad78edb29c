namespace GuideBuilder.Planning.Steps;

/// <summary>What the log says of a step: the day on which it was done, or else the date last given for it, or the day on which its party did not come.</summary>
internal sealed record Pin(LocalDate? Done, LocalDate? Given, LocalDate? Missed)
{
    /// <summary>Nothing is said of it.</summary>
    public static Pin None { get; } = new(null, null, null);
}

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
                pins[step.Id] = After(entry, step, pins.GetValueOrDefault(step.Id) ?? Pin.None);
            }
        }

        return pins.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static Pin After(LogEvent entry, Step step, Pin pin) => entry.What switch
    {
        LogKind.DateGiven => pin with { Given = entry.DateGiven },
        LogKind.Missed => pin with { Given = null, Missed = entry.Step == step.Id || entry.Party == step.Party ? entry.On : pin.Missed },
        LogKind.Refused => Pin.None,
        LogKind.Noted => pin,
        _ => pin with { Done = entry.On },
    };

    private static IEnumerable<Step> Touched(LogEvent entry, IReadOnlyList<Step> steps)
    {
        var named = steps.Where(s => LogMatch.Speaks(entry, s, steps)).ToArray();
        return entry.What == LogKind.Missed ? steps.Where(s => named.Contains(s) || (s.Meeting is not null && named.Any(n => n.Meeting == s.Meeting))) : named;
    }
}
