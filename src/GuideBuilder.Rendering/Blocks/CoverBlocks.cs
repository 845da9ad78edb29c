using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What the cover answers: what is wished, what it comes to, where you are, what to do next.</summary>
internal static class CoverBlocks
{
    private const int ActionsShown = 3;

    private static readonly ImmutableArray<string> Emergencies = ["network-emergency", "emergency-services", "gas-emergency", "supplier-meter-emergency", "independent-network-emergency"];

    /// <summary>The wish in one paragraph.</summary>
    internal static ImmutableArray<Block> Wish(Bindery bindery)
    {
        var way = bindery.Plan.ChosenWay;
        var chosen = way.State == ItemState.Settled ? "wish-settled" : "wish-open";
        return [new Block.Prose(bindery.Labels.Compose(chosen, ("way", bindery.Link(way.Item.Id)))), .. bindery.Read(way.Item.About)];
    }

    /// <summary>Cost, finish, hours off supply and the household's own hours, each as a range.</summary>
    internal static ImmutableArray<Block> KeyFigures(Bindery bindery)
    {
        var plan = bindery.Plan;
        return
        [
            new Block.Definitions(
            [
                One(bindery, "figure-cost", bindery.Total(plan.Money.Gross)),
                One(bindery, "figure-finish", Finish(bindery, plan.Schedule)),
                One(bindery, "figure-off-supply", Phrase.Of(bindery.Ranges.Hours(plan.Schedule.OffSupplyHours))),
                One(bindery, "figure-own-hours", Phrase.Of(bindery.Ranges.Hours(plan.Schedule.HouseholdHours))),
            ]),
            .. Needed(bindery, plan.Schedule),
        ];
    }

    /// <summary>The next three steps of the household, else of anybody, with dates and a letter each.</summary>
    internal static ImmutableArray<Block> NextActions(Bindery bindery)
    {
        var soon = bindery.Plan.Whereabouts.Next.Select(n => n.Step).ToList();
        var ahead = Make.Ahead(bindery.Plan).OrderBy(s => soon.IndexOf(s.Step.Item.Id) is >= 0 and var i ? i : soon.Count).ToList();
        var own = ahead.Where(s => s.Step.Item.IsDuty).ToList();
        var next = (own.Count > 0 ? own : ahead).Take(ActionsShown);
        return [.. next.Select(s => Action(bindery, s))];
    }

    /// <summary>The numbers to ring when it is urgent.</summary>
    internal static ImmutableArray<Block> EmergencyNumbers(Bindery bindery)
    {
        var bodies = bindery.Plan.Nation.Bodies;
        return Make.Grid(bindery, "emergency-caption", ["column-what", "column-call"], Emergencies.Where(bodies.ContainsKey).Select(b => Make.Row(null, Phrase.Of(bindery.Say($"for-{b}")), Phrase.Of(new Inline.Strong(bindery.Words(bodies[b]))))));
    }

    private static Definition One(Bindery bindery, string label, Phrase says) => new(null, Phrase.Of(bindery.Say(label)), [new Block.Prose(says)]);

    private static Phrase Finish(Bindery bindery, Schedule schedule) =>
        bindery.Finish(schedule.Finish) + (bindery.Plan.IsBeyond ? Phrase.Empty : bindery.Labels.Compose("figure-finish-likely", ("date", bindery.Dates.SayShort(schedule.Finish.Likely))));

    private static IEnumerable<Block> Needed(Bindery bindery, Schedule schedule)
    {
        if (schedule.NeededBy is not { } day)
        {
            return [];
        }

        var said = schedule.Feasibility switch
        {
            Feasibility.NoDate => "feasible-no-date",
            Feasibility.MetEvenIfSlow => "feasible-even-if-slow",
            Feasibility.MetIfLikely => "feasible-if-likely",
            Feasibility.OnlyIfQuick => "feasible-only-if-quick",
            Feasibility.NotPossible => "feasible-not",
            _ => throw new UnreachableException(),
        };
        return [new Block.Prose(bindery.Labels.Compose(said, ("date", bindery.Dates.Say(day))))];
    }

    private static Block.Entry Action(Bindery bindery, PlannedStep step) =>
        new(null, 1, bindery.Link(step.Step.Item.Id), bindery.Read(step.Step.Item.About), [.. Sides.OfStep(bindery, step), .. Sides.Letter(bindery, step.Step.Item)]);

    /// <summary>A letter's title as a link.</summary>
    internal static Phrase LetterLink(Bindery bindery, string id) =>
        Bindery.Link(id, Phrase.Of(bindery.Guidance.Letters.Where(l => l.Id == id).Select(l => PageTitle.Of(l)).FirstOrDefault(id)));
}
