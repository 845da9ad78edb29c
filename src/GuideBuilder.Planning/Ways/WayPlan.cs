using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Trials;

namespace GuideBuilder.Planning.Ways;

/// <summary>Everything that one way comes to.</summary>
internal sealed record WayPlan(
    WayCase Case,
    ImmutableArray<Planned<Party>> Parties,
    ImmutableArray<PlannedStep> Steps,
    Schedule Schedule,
    ImmutableArray<PlannedCost> Costs,
    MoneySummary Money,
    ImmutableArray<Planned<Hazard>> Hazards,
    ImmutableArray<Planned<Consent>> Consents,
    ImmutableArray<Planned<Clock>> Clocks,
    Chances Chances,
    Scheduling Scheduling)
{
    /// <summary>Plans a way in full: first what needs no dates, then the dates, then what is read off them.</summary>
    public static (WayPlan? Plan, IEnumerable<Fault> Faults) Of(WayCase way, PartyCalendars calendars, Effort effort, bool isChosen)
    {
        var steps = Items.Plan(way.Guidance.Steps, way.Lookup);
        var (scheduled, faults) = Scheduling.Of(way, steps, calendars, effort, isChosen ? effort.Many : effort.Few);
        if (scheduled is null)
        {
            return (null, faults);
        }

        var finished = way with { Facts = way.Facts.With(FromPlan(steps, scheduled)) };
        var costs = CostPlanner.Plan(finished, scheduled.Dates);
        var plan = new WayPlan(
            finished,
            Items.Plan(way.Guidance.Parties, finished.Lookup),
            [.. steps.Select(s => new PlannedStep(s, scheduled.Dates.GetValueOrDefault(s.Item.Id)))],
            scheduled.Schedule,
            costs,
            CostPlanner.Sum(costs, way.Nation.Currency, scheduled.Trials),
            Items.Plan(way.Guidance.Hazards, finished.Lookup),
            Items.Plan(way.Guidance.Consents, finished.Lookup),
            Items.Plan(way.Guidance.Clocks, finished.Lookup),
            scheduled.Trials.Chances([.. steps.Where(s => s.IsPresent).Select(s => s.Item)], scheduled.Schedule.NeededBy),
            scheduled);
        return (plan, faults.Concat(CostPlanner.Faults(costs, way.Market)));
    }

    /// <summary>The figures by which ways are compared.</summary>
    public WayFigures Figures => new(
        Money.Gross,
        Schedule.Finish,
        Schedule.OffSupplyHours,
        Schedule.HouseholdHours,
        [.. Hazards.Where(h => h.IsPresent).Select(h => h.Item.Id)],
        [.. Consents.Where(c => c.IsPresent).Select(c => c.Item.Id)]);

    /// <summary>The reason of every item of this way, for what is still open.</summary>
    public IEnumerable<Because> Reasons =>
        Parties.Select(p => p.Because)
            .Concat(Steps.Select(s => s.Step.Because))
            .Concat(Costs.Select(c => c.Cost.Because))
            .Concat(Consents.Select(c => c.Because))
            .Concat(Clocks.Select(c => c.Because))
            .Concat(Costs.Where(c => c.Cost.IsPresent).Select(c => Quantities.Reason(c.Cost.Item, Case)).OfType<Because>())
            .Concat(Steps.Where(s => s.Step.IsPresent).SelectMany(s => WorkDays.Reasons(s.Step.Item, Case)));

    private static IEnumerable<Given.Derived> FromPlan(ImmutableArray<Planned<Step>> steps, Scheduling scheduled)
    {
        yield return FactDeriver.OfPlan(CalculatedFact.OffSupplyHours, ReadOff.OffSupply(steps));
        yield return FactDeriver.OfPlan(CalculatedFact.Months, ReadOff.Months(steps, scheduled.Trials));
    }
}
