namespace GuideBuilder.Planning.Steps;

/// <summary>Days on which several parties come in order.</summary>
internal static class Meetings
{
    /// <summary>The turns of one meeting: by order, then as written.</summary>
    public static ImmutableArray<Step> InOrder(IEnumerable<Step> meeting) => [.. meeting.OrderBy(s => s.Order)];

    /// <summary>Every meeting among the steps, the earliest first, with likely hours from the first arrival.</summary>
    public static ImmutableArray<MeetingDay> Of(ImmutableArray<Step> steps, FrozenDictionary<string, StepDates> dates) =>
    [
        .. steps.Where(s => s.Meeting is not null)
            .GroupBy(s => s.Meeting!, StringComparer.Ordinal)
            .Select(m => Day(m.Key, InOrder(m), dates))
            .OrderBy(m => m.Day)
            .ThenBy(m => m.Meeting, StringComparer.Ordinal),
    ];

    // Turns that are done keep their own days; the meeting's day is that of those still to come.
    private static MeetingDay Day(string meeting, ImmutableArray<Step> turns, FrozenDictionary<string, StepDates> dates)
    {
        var last = turns.Select(t => dates[t.Id]).OrderBy(d => d.EarliestStart).Last();
        var ahead = turns.Where(t => !dates[t.Id].Done).ToImmutableArray();
        return new(meeting, last.EarliestStart, last.StartRange, Timed(ahead.IsEmpty ? turns : ahead));
    }

    private static ImmutableArray<MeetingTurn> Timed(ImmutableArray<Step> turns)
    {
        var timed = ImmutableArray.CreateBuilder<MeetingTurn>(turns.Length);
        var at = 0m;
        foreach (var turn in turns)
        {
            timed.Add(new(turn.Id, at, at + Hours.Of(turn).Likely, turn.SupplyOff));
            at += Hours.Of(turn).Likely;
        }

        return timed.MoveToImmutable();
    }
}
