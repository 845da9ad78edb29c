namespace GuideBuilder.Reading;

/// <summary>What cannot have happened in the order in which the log says it did.</summary>
internal static class LogOrder
{
    // What must come first, if the log has it at all, between the same household and party (or on the same step).
    private static readonly (LogKind First, LogKind Then)[] Orders =
    [
        (LogKind.Applied, LogKind.Surveyed),
        (LogKind.Applied, LogKind.Quoted),
        (LogKind.Applied, LogKind.Accepted),
        (LogKind.Quoted, LogKind.Accepted),
        (LogKind.DateGiven, LogKind.Missed),
    ];

    /// <summary>Adds a fault for each entry that contradicts another.</summary>
    public static void Check(ImmutableArray<LogEvent> log, ImmutableArray<Step> steps, FaultList faults)
    {
        foreach (var later in log)
        {
            foreach (var (first, then) in Orders.Where(o => o.Then == later.What))
            {
                CheckOrder(log, later, first, faults);
            }
        }

        CheckDone(log, faults);
        CheckMissed(log, faults);
        CheckTurns(log, steps, faults);
    }

    private static void CheckOrder(ImmutableArray<LogEvent> log, LogEvent later, LogKind first, FaultList faults)
    {
        var firsts = log.Where(e => e.What == first && Concern(e, later)).ToList();
        if (firsts.Count > 0 && firsts.All(e => e.On > later.On))
        {
            faults.Add(ReadingFaults.LogOutOfOrder(later.Place, LogWords.Of(later.What), LogWords.Of(first), firsts.MinBy(e => e.On)!));
        }
    }

    private static void CheckDone(ImmutableArray<LogEvent> log, FaultList faults)
    {
        foreach (var done in log.Where(e => e.What == LogKind.Done && e.Step is not null).GroupBy(e => e.Step, StringComparer.Ordinal))
        {
            var first = done.First();
            foreach (var again in done.Skip(1))
            {
                faults.Add(ReadingFaults.DoneTwice(again.Place, done.Key!, first));
            }

            foreach (var after in log.Where(e => e.What is LogKind.DateGiven or LogKind.Missed && e.Step == done.Key && e.On > first.On))
            {
                faults.Add(ReadingFaults.AfterDone(after.Place, LogWords.Of(after.What), done.Key!, first));
            }
        }
    }

    private static void CheckMissed(ImmutableArray<LogEvent> log, FaultList faults)
    {
        foreach (var missed in log.Where(e => e.What == LogKind.Missed && e.Step is not null))
        {
            if (!log.Any(e => e.What == LogKind.DateGiven && e.Step == missed.Step))
            {
                faults.Add(ReadingFaults.MissedWithoutDate(missed.Place, missed.Step!));
            }
        }
    }

    // A turn of a day on which several meet is done before whatever waits for it, whoever did it.
    private static void CheckTurns(ImmutableArray<LogEvent> log, ImmutableArray<Step> steps, FaultList faults)
    {
        var done = log.Where(e => e.What == LogKind.Done && e.Step is not null).DistinctBy(e => e.Step).ToFrozenDictionary(e => e.Step!, StringComparer.Ordinal);
        foreach (var turn in steps.Where(s => s.Meeting is not null && done.ContainsKey(s.Id)).Select(s => done[s.Id]))
        {
            foreach (var early in Behind(turn.Step!, steps).Where(done.ContainsKey).Select(id => done[id]).Where(e => e.On < turn.On))
            {
                faults.Add(ReadingFaults.DoneTooSoon(early.Place, early.Step!, turn));
            }
        }
    }

    // All steps that wait for this one to end, or for one that does, in the order of the guidance.
    private static IEnumerable<string> Behind(string id, ImmutableArray<Step> steps)
    {
        var behind = new HashSet<string>(StringComparer.Ordinal) { id };
        while (steps.FirstOrDefault(s => !behind.Contains(s.Id) && s.After.Any(l => l.Kind == LinkKind.FinishToStart && behind.Contains(l.Step))) is { } next)
        {
            behind.Add(next.Id);
        }

        return steps.Select(s => s.Id).Where(s => s != id && behind.Contains(s));
    }

    private static bool Concern(LogEvent one, LogEvent other) =>
        one.Step is not null && other.Step is not null && one.What == LogKind.DateGiven ? one.Step == other.Step
        : one.Party is null || other.Party is null ? one.Step == other.Step && one.Party == other.Party
        : one.Party == other.Party;
}
