namespace GuideBuilder.Planning.Sequence;

/// <summary>One loosening that makes an impossible date possible: of what, how, and by how many days. Other: the far end of a link, where it is one.</summary>
public sealed record Change(ChangeKind Kind, string Id, string? Other, int Days);

/// <summary>What is loosened; the earlier in this list is named first when two ask for as many days.</summary>
public enum ChangeKind
{
    /// <summary>The wait before the activity, after the other, is shorter; in days of the link's calendar.</summary>
    ShorterWait,

    /// <summary>The activity may start earlier; in days of the year.</summary>
    EarlierStart,

    /// <summary>The date given to the activity is earlier; in days of the year.</summary>
    EarlierDate,

    /// <summary>The activity takes less; in its own open days.</summary>
    ShorterDuration,

    /// <summary>The activity may start longer after the other has finished; in days of the link's calendar.</summary>
    LongerValidity,

    /// <summary>The activity may finish later; in days of the year.</summary>
    LaterFinish,

    /// <summary>The activity's crew comes on any weekday but its closed days; counted as no days, and named last.</summary>
    AnyWeekday,
}

/// <summary>Looks for the smallest single change that would make an impossible date possible, by trying each bound that the plan holds with every number of days.</summary>
public static class Relaxation
{
    private const int Longest = 400;

    /// <summary>The change of fewest days; an answer that no days can give (a crew on other weekdays) only where there is no other. Null where nothing alone would do, or nothing is wrong.</summary>
    public static Change? Smallest(Network network, LocalDate start, LocalDate? deadline) =>
        Works(network, start, deadline) ? null : All(network, start, deadline).FirstOrDefault();

    /// <summary>Every single change that would do, each at its smallest, the smallest first.</summary>
    public static ImmutableArray<Change> All(Network network, LocalDate start, LocalDate? deadline)
    {
        var forward = Sequencer.Forward(network, start);
        var named = forward.Obstacles.SelectMany(o => o.Chain).Concat(Sequencer.DrivingChain(forward)).Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        return [.. All(network, named, n => Works(n, start, deadline))];
    }

    /// <summary>The change of fewest days among those activities with which a network works; null where nothing alone would do.</summary>
    internal static Change? Smallest(Network network, IEnumerable<string> among, Func<Network, bool> works) =>
        All(network, among.ToHashSet(StringComparer.Ordinal), works).FirstOrDefault();

    private static IEnumerable<Change> All(Network network, HashSet<string> named, Func<Network, bool> works) => Offers(network, named)
        .Select(o => Least(o, n => works(o.Loosen(n))) is { } days ? new Change(o.Kind, o.Id, o.Other, days) : null)
        .OfType<Change>()
        .OrderBy(c => c.Kind == ChangeKind.AnyWeekday)
        .ThenBy(c => c.Days)
        .ThenBy(c => c.Kind);

    private static bool Works(Network network, LocalDate start, LocalDate? deadline)
    {
        var forward = Sequencer.Forward(network, start);
        return forward.IsPossible && (deadline is null || forward.Finish <= deadline);
    }

    /// <summary>The fewest days that do, found by halving; what is found does, and only where a longest wait pulls the other way might fewer days do too.</summary>
    private static int? Least(Offer offer, Func<int, bool> works)
    {
        if (offer.Most < offer.Fewest || !works(offer.Most))
        {
            return null;
        }

        var (low, high) = (offer.Fewest, offer.Most);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = works(middle) ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>Only what stands in a chain can help, and the group members that decide it with them.</summary>
    private static IEnumerable<Offer> Offers(Network network, HashSet<string> named)
    {
        var groups = network.Activities.Where(a => named.Contains(a.Id) && a.Group is not null).Select(a => a.Group!).ToHashSet(StringComparer.Ordinal);
        bool Counts(Activity a) => named.Contains(a.Id) || (a.Group is not null && groups.Contains(a.Group));
        var ids = network.Activities.Where(Counts).Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. network.Precedences.Where(p => p.Lag > 0 && ids.Contains(p.To)).Select(p => Wait(network, p)),
            .. network.Activities.Where(a => ids.Contains(a.Id) && !a.IsDone).SelectMany(a => OfActivity(network, a)),
            .. network.Maximals.Where(m => ids.Contains(m.Later) || ids.Contains(m.Earlier)).Select(m => Validity(network, m)),
        ];
    }

    // Whoever meets waits together: the longest notice before the day is one wait, however many turns of the day it stands at.
    private static Offer Wait(Network network, Precedence p)
    {
        var group = network.Activities.First(a => a.Id == p.To).Group;
        var turns = network.Activities.Where(a => a.Id == p.To || (group is not null && a.Group == group)).Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        var together = network.Precedences.Where(q => q.From == p.From && q.Kind == p.Kind && turns.Contains(q.To)).ToHashSet();
        Precedence Shorter(Precedence q, int n) => q == p || (together.Contains(q) && together.All(o => o.Lag <= p.Lag)) ? q with { Lag = Math.Min(q.Lag, p.Lag - n) } : q;
        return new(ChangeKind.ShorterWait, p.To, p.From, 1, p.Lag, n => network with { Precedences = [.. network.Precedences.Select(q => Shorter(q, n))] });
    }

    private static Offer Validity(Network network, Maximal m) => new(
        ChangeKind.LongerValidity, m.Later, m.Earlier, 1, Longest, n => network with { Maximals = network.Maximals.Replace(m, m with { Days = m.Days + n }) });

    private static IEnumerable<Offer> OfActivity(Network network, Activity a)
    {
        Network With(Activity changed) => network with { Activities = network.Activities.Replace(a, changed) };
        if (a.NotBefore is { } notBefore && !a.IsGiven)
        {
            yield return new(ChangeKind.EarlierStart, a.Id, null, 1, Longest, n => With(a with { NotBefore = notBefore.PlusDays(-n) }));
        }

        if (a.IsGiven)
        {
            yield return new(ChangeKind.EarlierDate, a.Id, null, 1, Longest, n => With(a with { PinnedStart = a.PinnedStart!.Value.PlusDays(-n) }));
            yield break;
        }

        yield return new(ChangeKind.ShorterDuration, a.Id, null, 1, a.Days - 1, n => With(a with { Days = a.Days - n }));
        if (a.FinishBy is { } by)
        {
            yield return new(ChangeKind.LaterFinish, a.Id, null, 1, Longest, n => With(a with { FinishBy = by.PlusDays(n) }));
        }

        if (a.Calendar.Weekdays.Count < 5)
        {
            yield return new(ChangeKind.AnyWeekday, a.Id, null, 0, 0, _ => With(a with { Calendar = AnyWeekday(a.Calendar) }));
        }
    }

    private static WorkingCalendar AnyWeekday(WorkingCalendar calendar) =>
        calendar with { Weekdays = Enumerable.Range((int)IsoDayOfWeek.Monday, 5).Select(d => (IsoDayOfWeek)d).ToFrozenSet() };

    private sealed record Offer(ChangeKind Kind, string Id, string? Other, int Fewest, int Most, Func<int, Network> Loosen);
}
