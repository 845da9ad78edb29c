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
                pins[step.Id] = IsVoidedBy(entry, step, steps) ? Pin.None : After(entry, step, pins.GetValueOrDefault(step.Id) ?? Pin.None);
            }
        }

        Imply(pins, steps);
        return pins.ToFrozenDictionary(StringComparer.Ordinal);
    }

    // What shows that another step is done gives that step its own day, the first of several, unless the log speaks of it or says that on that day it was not done.
    private static void Imply(Dictionary<string, Pin> pins, IReadOnlyList<Step> steps)
    {
        var unsaid = steps.Where(s => !s.DoneWith.IsEmpty && pins.GetValueOrDefault(s.Id)?.Done is null).ToArray();
        while (unsaid.FirstOrDefault(s => Shown(s, pins) is { } day && pins.GetValueOrDefault(s.Id) is var pin && !(pin?.Done <= day) && !(pin?.Missed >= day)) is { } step)
        {
            pins[step.Id] = Pin.None with { Done = Shown(step, pins) };
        }
    }

    private static LocalDate? Shown(Step step, Dictionary<string, Pin> pins) => step.DoneWith.Select(id => pins.GetValueOrDefault(id)?.Done).Min();

    private static Pin After(LogEvent entry, Step step, Pin pin) => entry.What switch
    {
        LogKind.DateGiven => pin with { Given = entry.DateGiven, Missed = null },
        LogKind.Missed => pin with { Given = null, Missed = entry.Step == step.Id || entry.Party == step.Party ? entry.On : pin.Missed },
        LogKind.Refused => Pin.None,
        LogKind.Noted => pin,
        _ => pin with { Done = entry.On },
    };

    private static IEnumerable<Step> Touched(LogEvent entry, IReadOnlyList<Step> steps)
    {
        var named = steps.Where(s => LogMatch.Speaks(entry, s, steps)).ToArray();
        return entry.What == LogKind.Missed ? steps.Where(s => named.Contains(s) || named.Any(n => IsOfItsDay(s, n, steps))) : named;
    }

    // Whoever meets with the one who did not come, and what must be done again before each such day.
    private static bool IsOfItsDay(Step step, Step missed, IReadOnlyList<Step> steps) => missed.Meeting is { } meeting && (step.Meeting == meeting || IsBefore(step, meeting, steps));

    private static bool IsVoidedBy(LogEvent entry, Step step, IReadOnlyList<Step> steps) =>
        entry.What == LogKind.Missed && steps.Any(m => LogMatch.Speaks(entry, m, steps) && m.Meeting is { } meeting && IsBefore(step, meeting, steps));

    private static bool IsBefore(Step step, string meeting, IReadOnlyList<Step> steps) =>
        step.EachTime && step.NoLaterThan.Any(l => steps.Any(s => s.Id == l.Step && s.Meeting == meeting));
}
