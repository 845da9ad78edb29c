using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Planning.Hazards;
using GuideBuilder.Planning.Log;
using GuideBuilder.Planning.Questions;
using GuideBuilder.Planning.Siting;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning;

/// <summary>From what is known of a home to what follows from it.</summary>
public static class Planner
{
    /// <summary>Judges the ways, plans each that is not ruled out, and tells the whole by the chosen one.</summary>
    public static Staged<Plan> Plan(Facts facts, Guidance guidance, Occasion occasion) => Plan(facts, guidance, occasion, occasion.FaultsOnly ? Effort.None : Effort.Whole);

    /// <summary>The same for the chosen way alone and from few trials: quick and rough, for somebody who is still answering.</summary>
    public static Staged<Plan> Sketch(Facts facts, Guidance guidance, Occasion occasion) => Plan(facts, guidance, occasion, Effort.Sketch);

    /// <summary>The same with as much effort as is asked for.</summary>
    internal static Staged<Plan> Plan(Facts facts, Guidance guidance, Occasion occasion, Effort effort)
    {
        var nation = NationOf(facts.Answers, guidance);
        var ways = WayChoice.Ways(guidance.Ways, name => facts[name]);
        var chosen = WayChoice.Of(ways, Known.Option(facts.Answers, "wish.way"));
        var holidays = guidance.Tables.Holidays.FirstOrDefault(h => h.Id == nation.Holidays);
        var faults = WayChoice.Faults(guidance)
            .Concat(chosen is null ? [PlanningFaults.NoWayLeft()] : [])
            .Concat(holidays is null ? [PlanningFaults.NoHolidays(nation.Holidays, nation.Place)] : [])
            .ToImmutableArray();
        if (chosen is null || holidays is null || faults.Length > 0)
        {
            return Staged<Plan>.From(null, faults);
        }

        var world = World.Assumed(facts.Answers, guidance.Questions);
        var calendars = PartyCalendars.Of(guidance.Parties, holidays, world.Answers, Deadlines.Start(facts.Answers, occasion.Today));
        var here = Outranked.By(facts.Answers, guidance);
        var cases = ways.Where(w => effort.Compares ? w.IsPresent : w == chosen).Select(w => WayCase.Of(w.Item, facts.Answers, world, here, occasion, nation)).ToArray();
        var plans = cases.Select(c => WayPlan.Of(c.Case, calendars, effort, c.Case.Way == chosen.Item)).ToArray();
        var seen = cases.SelectMany(c => c.Faults).Concat(plans.SelectMany(p => p.Faults));
        return Staged<Plan>.From(Join(ways, chosen, [.. plans.Select(p => p.Plan).OfType<WayPlan>()], world, calendars, effort), seen);
    }

    // Null when the chosen way could not be planned; its faults say why.
    private static Plan? Join(ImmutableArray<Planned<Way>> ways, Planned<Way> chosen, ImmutableArray<WayPlan> plans, World world, PartyCalendars calendars, Effort effort)
    {
        var plan = plans.FirstOrDefault(p => p.Case.Way.Id == chosen.Item.Id);
        if (plan is null)
        {
            return null;
        }

        var (facts, guidance) = (plan.Case.Facts, plan.Case.Guidance);
        var hazards = HazardPlanner.Union([.. plans.Select(p => (p.Case.Way.Id, p.Hazards))], chosen.Item.Id, guidance.Hazards.Length);
        var reasons = ways.Select(w => w.Because).Concat(plan.Reasons).Concat(hazards.Select(h => h.Hazard.Because));
        var whole = new Plan(
            facts,
            plan.Case.Occasion,
            plan.Case.Nation,
            [.. ways.Select(w => new PlannedWay(w, plans.FirstOrDefault(p => p.Case.Way.Id == w.Item.Id)?.Figures))],
            chosen,
            plan.Parties,
            plan.Steps,
            MeetingPlanner.Plan(Prospects.Of(plan.Schedule, plan.Scheduling), plan, calendars),
            plan.Costs,
            plan.Money,
            hazards,
            plan.Consents,
            plan.Clocks,
            OpenQuestions.Of(reasons, guidance.Questions),
            Taken.Of(plan, world))
        {
            Chances = plan.Chances,
            Whereabouts = WhereaboutsPlanner.Of(plan, calendars),
            Electrical = ElectricalSheets.Of(plan.Case.KnownOrAbsent, guidance.Tables),
            Ground = GroundSheets.Of(plan.Case.KnownOrAbsent, plan.Case.InWorldOrAbsent, guidance.Tables),
            Siting = SitingRules.Of(plan.Case.KnownOrAbsent, guidance.Tables),
        };
        whole = effort.Compares ? WithChances(whole, plan, world, effort) : whole;
        whole = whole with { StopSteps = StopSteps.Of(whole) };
        return whole.IsCounted ? whole : Undated(whole);
    }

    // What is told of chance, money over time and answers that are not known yet.
    private static Plan WithChances(Plan whole, WayPlan plan, World world, Effort effort) => whole with
    {
        Events = [.. plan.Scheduling.Trials.Events.Select(e => new PlannedEvent(e.Step, e.Event, e.Share, plan.Costs.FirstOrDefault(c => c.Cost.IsPresent && e.Event.Costs.Contains(c.Cost.Item.Id))))],
        Payments = CashFlow.Of(plan.Costs, plan.Schedule.Meetings),
        QuotationChecks = QuotationChecks.Of(plan),
        FindOutFirst = FindOutFirst.Of(plan, whole.OpenQuestions, world, effort.Threads),
        Idle = FindOutFirst.Idle(plan, whole.OpenQuestions),
    };

    // What has been done keeps its days; nothing that is still to come has one.
    private static Plan Undated(Plan plan) => plan with
    {
        Steps = [.. plan.Steps.Select(s => s.Dates is { Done: true } ? s : s with { Dates = null })],
        Costs = [.. plan.Costs.Select(c => c with { Due = null })],
        Schedule = plan.Schedule with { Meetings = [], DrivingSteps = [], Feasibility = Feasibility.NoDate, NeededBy = null, LastSafe = null, Change = null },
        Whereabouts = plan.Whereabouts with { Late = [], Next = [], Conflicts = [], Payments = [], Gates = [.. plan.Whereabouts.Gates.Select(g => g with { Expected = null })] },
        Payments = [],
        Chances = null,
        FindOutFirst = [.. plan.FindOutFirst.Select(f => f with { Rows = [.. f.Rows.Select(r => r with { Cost = null, Finish = null, MeetsDate = null })], MayWiden = false })],
    };

    // Every answers file names its nation; Reading has seen to it.
    private static Nation NationOf(AnswerSet answers, Guidance guidance) =>
        guidance.Nations.First(n => n.Id == Known.Option(answers, "home.nation"));
}
