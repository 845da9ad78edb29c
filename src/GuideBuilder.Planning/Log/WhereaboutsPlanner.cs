using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Log;

/// <summary>Reads off the plan and the log where the household is today.</summary>
internal static class WhereaboutsPlanner
{
    /// <summary>What is done, late and next, and what stands before a payment.</summary>
    public static Whereabouts Of(WayPlan plan, PartyCalendars calendars)
    {
        var dated = plan.Steps.Where(s => s.Dates is not null).ToImmutableArray();
        var done = dated.Where(s => s.Dates!.Done).ToImmutableArray();
        var (next, gates) = (Next(plan, dated), Gates.Of(plan.Steps).ToImmutableArray());
        return new Whereabouts(
            done.Length,
            dated.Length,
            done.OrderBy(s => s.Dates!.EarliestFinish).LastOrDefault()?.Step.Item.Id,
            [.. Lateness.Of(plan, dated, next).OrderBy(l => l.Because != LateBecause.Missed)],
            next,
            gates,
            [.. RunningClocks.Of(plan, calendars)],
            [.. plan.Scheduling.Passes.Forward.Conflicts.Select(c => new DateConflict(c.Id, c.Given, c.Earliest, [.. c.Chain.Select(t => t.Id)]))],
            DarkSince(dated))
        {
            Payments = [.. gates.Select(g => g.Payment).Distinct(StringComparer.Ordinal).Select(id => new GatedPayment(id, plan.Scheduling.Trials.SumOf(plan.Case.StepsById[id].Costs)))],
        };
    }

    // What waits for nothing that is still to come, by the day by which it must be done.
    private static ImmutableArray<NextItem> Next(WayPlan plan, ImmutableArray<PlannedStep> dated)
    {
        var ahead = dated.Where(s => !s.Dates!.Done).ToFrozenDictionary(s => s.Step.Item.Id, s => s.Dates!, StringComparer.Ordinal);
        var links = plan.Scheduling.Network.Network.Precedences;
        var waiting = Waiting(ahead, dated, links);
        var overtaken = Overtaken(ahead.Keys, links);
        var next = dated.Select(s => s.Step.Item.Id).Where(id => ahead.ContainsKey(id) && !waiting.Contains(id) && !overtaken.Contains(id));
        return [.. next.Select(id => new NextItem(id, By(ahead[id]))).OrderBy(n => n.By)];
    }

    // What waits for something that is still to come; of a meeting all turns do while one of them does.
    private static FrozenSet<string> Waiting(FrozenDictionary<string, StepDates> ahead, ImmutableArray<PlannedStep> dated, ImmutableArray<Precedence> links)
    {
        var meetings = dated.Where(s => s.Step.Item.Meeting is not null).ToFrozenDictionary(s => s.Step.Item.Id, s => s.Step.Item.Meeting!, StringComparer.Ordinal);
        var behind = links.Where(p => ahead.ContainsKey(p.From)).ToArray();
        var held = behind.Where(p => meetings.TryGetValue(p.To, out var day) && meetings.GetValueOrDefault(p.From) != day).Select(p => meetings[p.To]).ToFrozenSet(StringComparer.Ordinal);
        return [.. behind.Select(p => p.To), .. meetings.Where(m => held.Contains(m.Value)).Select(m => m.Key)];
    }

    // Steps that the log does not name, while all that waits for them is done or overtaken itself: the quotation came, so somebody made it.
    private static HashSet<string> Overtaken(IEnumerable<string> ahead, ImmutableArray<Precedence> links)
    {
        var followers = links.ToLookup(p => p.From, p => p.To, StringComparer.Ordinal);
        var waiting = ahead.ToHashSet(StringComparer.Ordinal);
        var overtaken = new HashSet<string>(StringComparer.Ordinal);
        while (waiting.FirstOrDefault(id => followers[id].Any() && !followers[id].Any(waiting.Contains)) is { } found)
        {
            waiting.Remove(found);
            overtaken.Add(found);
        }

        return overtaken;
    }

    private static LocalDate By(StepDates dates) => dates.DateGiven ?? LocalDate.Max(dates.LatestFinish, dates.EarliestFinish);

    // A meeting that broke off after the supply went off, and before the last turn without it was done.
    private static LocalDate? DarkSince(ImmutableArray<PlannedStep> dated)
    {
        var off = dated.Where(s => s.Step.Item is { Meeting: not null, SupplyOff: true }).GroupBy(s => s.Step.Item.Meeting, StringComparer.Ordinal);
        return off.Where(m => m.Any(s => s.Dates!.Done) && !m.MaxBy(s => s.Step.Item.Order)!.Dates!.Done)
            .Select(m => (LocalDate?)m.Where(s => s.Dates!.Done).Min(s => s.Dates!.EarliestStart))
            .Min();
    }
}
