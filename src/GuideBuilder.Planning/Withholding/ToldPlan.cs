using GuideBuilder.Planning.Log;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Withholding;

/// <summary>A plan for readers who may not know all the answers it was made from: the days, the sums and the holds stay, and what would tell an answer goes.</summary>
public static class ToldPlan
{
    /// <summary>The plan as it is told. An item that waits for an answer which is not told may apply, without a day, whatever the answer is; no reason, question or chain names it.</summary>
    public static Plan Of(Plan plan, AnswerSet told, Guidance guidance)
    {
        var kept = new KeptBack(plan, told, guidance);
        ImmutableArray<PlannedStep> steps = [.. plan.Steps.Select(s => Step(s, kept))];
        return Listed(plan, kept) with
        {
            Facts = kept.Facts with { Answers = History(kept.Facts.Answers, kept) },
            Steps = steps,
            Schedule = Schedule(plan.Schedule, kept),
            Whereabouts = Where(plan.Whereabouts, steps, kept),
            Chances = plan.Chances is { } chances ? chances with { StepShares = Without(chances.StepShares, kept), Deciding = Without(chances.Deciding, kept) } : null,
            Events = [.. plan.Events.Where(e => !kept.Items.Contains(e.Step))],
            StopSteps = [.. plan.StopSteps.Where(s => !kept.Items.Contains(s))],
            OpenQuestions = [.. plan.OpenQuestions.Select(q => Open(q, kept)).OfType<OpenQuestion>()],
            FindOutFirst = [.. plan.FindOutFirst.Select(f => FindOut(f, kept)).OfType<FindOut>()],
            Assumptions = [.. plan.Assumptions.Where(a => kept.IsTold(a.Question)).Select(a => a with { Brings = [.. a.Brings.Where(i => !kept.Items.Contains(i.Id))] })],
            Idle = [.. plan.Idle.Where(kept.IsTold)],
        };
    }

    // The way that is followed cannot be kept back, only why the others are not.
    private static Plan Listed(Plan plan, KeptBack kept)
    {
        var reasons = WayChoice.Ways([.. plan.Ways.Select(w => w.Way.Item)], name => kept.Before[name]).ToFrozenDictionary(w => w.Item.Id, w => w.Because, StringComparer.Ordinal);
        return plan with
        {
            Ways = [.. plan.Ways.Select(w => new PlannedWay(w.Way with { Because = kept.Tell(reasons[w.Way.Item.Id]) }, w.Figures is { } f ? f with { Hazards = kept.HazardsWith(f.Hazards) } : null))],
            ChosenWay = plan.ChosenWay with { Because = kept.Tell(reasons[plan.ChosenWay.Item.Id]) },
            Parties = [.. plan.Parties.Select(kept.Tell)],
            Costs = [.. plan.Costs.Select(c => c with { Cost = kept.Tell(c.Cost) })],
            Hazards = [.. plan.Hazards.Select(h => kept.Items.Contains(h.Hazard.Item.Id) ? new PlannedHazard(kept.Tell(h.Hazard), [.. plan.Ways.Where(w => w.Way.IsPresent).Select(w => w.Way.Item.Id)]) : h with { Hazard = kept.Tell(h.Hazard) })],
            Consents = [.. plan.Consents.Select(kept.Tell)],
            Clocks = [.. plan.Clocks.Select(kept.Tell)],
        };
    }

    private static AnswerSet History(AnswerSet told, KeptBack kept) => told with
    {
        Log = [.. told.Log.Where(e => e.Step is not { } step || !kept.Items.Contains(step)).Where(e => e.Party is not { } party || !kept.Items.Contains(party))],
        Papers = [.. told.Papers.Where(p => p.From is not { } party || !kept.Items.Contains(party))],
    };

    // Where the days of the household decide, only the day that comes out is told.
    private static PlannedStep Step(PlannedStep step, KeptBack kept)
    {
        var told = kept.Tell(step.Step);
        return kept.Items.Contains(told.Item.Id) || step.Dates is not { } dates ? new(told, null)
            : new(told, dates with
            {
                DrivenBy = Named(dates.DrivenBy, kept),
                Via = Named(dates.Via, kept),
                FreeFrom = AsksHousehold(told.Item) ? dates.EarliestStart : dates.FreeFrom,
                Decider = Named(dates.DrivenBy, kept) is null && dates.DrivenBy is not null ? Decider.Untold : dates.Decider,
            });
    }

    private static bool AsksHousehold(Step step) => step.Party == Party.Household || step.Meeting is not null || step.OnDaysOf.Contains(Party.Household);

    private static Schedule Schedule(Schedule schedule, KeptBack kept) => schedule with
    {
        DrivingSteps = Told(schedule.DrivingSteps, kept),
        LastSafe = schedule.LastSafe is { } safe && Named(safe.Step, kept) is null ? null : schedule.LastSafe,
        Change = Change(schedule.Change, kept),
        Limits = [.. schedule.Limits.Where(l => Named(l.Step, kept) is not null && Named(l.Other, kept) is not null).Select(l => l with { Chain = Told(l.Chain, kept), Change = Change(l.Change, kept) })],
        Stuck = Told(schedule.Stuck, kept),
    };

    private static SmallestChange? Change(SmallestChange? change, KeptBack kept) =>
        change is { } c && ((c.Step is not null && Named(c.Step, kept) is null) || (c.Other is not null && Named(c.Other, kept) is null)) ? null : change;

    private static Whereabouts Where(Whereabouts where, ImmutableArray<PlannedStep> steps, KeptBack kept)
    {
        var dated = steps.Where(s => s.Dates is not null).ToList();
        return where with
        {
            Done = dated.Count(s => s.Dates!.Done),
            Dated = dated.Count,
            LastDone = dated.Where(s => s.Dates!.Done).OrderBy(s => s.Dates!.EarliestFinish).LastOrDefault()?.Step.Item.Id,
            Late = [.. where.Late.Where(l => Named(l.Step, kept) is not null)],
            Next = [.. where.Next.Where(n => Named(n.Step, kept) is not null)],
            Gates = where.Gates.IsEmpty ? [] : [.. Gates.Of(steps)],
            Conflicts = [.. where.Conflicts.Where(c => Named(c.Step, kept) is not null).Select(c => c with { Chain = Told(c.Chain, kept) })],
        };
    }

    private static OpenQuestion? Open(OpenQuestion open, KeptBack kept)
    {
        ImmutableArray<ItemName> settles = [.. open.WouldSettle.Where(i => !kept.Items.Contains(i.Id))];
        return !kept.IsTold(open.Question) || (settles.IsEmpty && !open.WouldSettle.IsEmpty) ? null : open with { WouldSettle = settles };
    }

    private static FindOut? FindOut(FindOut find, KeptBack kept) => Open(find.Open, kept) is not { } open ? null
        : find with { Open = open, Rows = [.. find.Rows.Select(r => r with { Changes = [.. r.Changes.Where(c => !kept.Items.Contains(c.Item.Id))] })] };

    private static string? Named(string? id, KeptBack kept) => id is not null && kept.Items.Contains(id) ? null : id;

    private static ImmutableArray<string> Told(ImmutableArray<string> ids, KeptBack kept) => [.. ids.Where(id => !kept.Items.Contains(id))];

    private static FrozenDictionary<string, double> Without(FrozenDictionary<string, double> shares, KeptBack kept) =>
        shares.Where(s => !kept.Items.Contains(s.Key)).ToFrozenDictionary(s => s.Key, s => s.Value, StringComparer.Ordinal);
}
