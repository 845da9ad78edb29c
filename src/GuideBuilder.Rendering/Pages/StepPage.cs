using GuideBuilder.Rendering.Blocks;

namespace GuideBuilder.Rendering.Pages;

/// <summary>The home page of a step: what it is, who and when, how to do it, how to see that it is done, what can go wrong.</summary>
internal static class StepPage
{
    internal static ImmutableArray<Block> Of(Bindery bindery, PlannedStep planned)
    {
        var step = planned.Step.Item;
        return
        [
            new Block.Entry(null, 1, Phrase.Empty, bindery.Read(step.About), [.. Sides.OfStep(bindery, planned), .. More(bindery, planned)]),
            .. HazardPanels.Of(bindery, step),
            .. Make.Under(bindery, "step-how-to", step.HowTo),
            .. Make.Under(bindery, "step-done-when", Done(bindery, step)),
            .. Make.Under(bindery, "step-goes-wrong", step.IfItGoesWrong),
            .. Make.Under(bindery, "step-who-instead", [.. bindery.Read(step.WhoInstead, 2), .. Make.List(Instead(bindery, step))]),
            .. Make.Under(bindery, "gates-head", WhereBlocks.GatesOf(bindery, step.Id)),
            .. Make.Under(bindery, "step-pays", Make.List(step.Costs.Where(bindery.Items.IsPresent).Select(c => Pay(bindery, c)))),
            .. Make.Under(bindery, "step-after", Make.List(step.After.Where(l => bindery.Items.IsPresent(l.Step)).Select(l => bindery.Link(l.Step)))),
            .. Make.Under(bindery, "step-needs", Make.List(step.Needs.Where(bindery.Items.IsPresent).Select(bindery.Link))),
            .. Make.Under(bindery, "step-before", Make.List(Followers(bindery, step).Select(bindery.Link))),
        ];
    }

    private static ImmutableArray<SideLine> More(Bindery bindery, PlannedStep planned)
    {
        var step = planned.Step.Item;
        return
        [
            Sides.Line(bindery, "left-how-long", Phrase.Of(step is { Meeting: not null, Hours: { } hours } ? bindery.Ranges.Hours(hours) : bindery.Ranges.Of(step.Takes))),
            .. step is { Meeting: null, Hours: { } work } ? [Sides.Line(bindery, "left-work", Phrase.Of(bindery.Ranges.Hours(Figures.Work(work))))] : ImmutableArray<SideLine>.Empty,
            .. Share(bindery, planned),
            .. Spare(bindery, planned),
            .. Decided(bindery, planned),
            .. step.SupplyOff ? [Sides.Line(bindery, "left-supply", Phrase.Of(SupplyWords.Of(bindery, step)))] : ImmutableArray<SideLine>.Empty,
            .. Sides.Letter(bindery, step),
        ];
    }

    // How often an open step is in the plan; a judgement, so never in the public edition.
    private static ImmutableArray<SideLine> Share(Bindery bindery, PlannedStep planned) =>
        planned.Step.State == ItemState.Open && bindery.Plan.Occasion.Edition != EditionKind.Public && bindery.Plan.Chances?.StepShares.TryGetValue(planned.Step.Item.Id, out var share) == true
            ? [Sides.Line(bindery, "left-in-runs", Phrase.Of(EventBlocks.Chance(bindery, share)))]
            : [];

    private static ImmutableArray<SideLine> Decided(Bindery bindery, PlannedStep planned) =>
        planned.Dates is { Done: false } dates && ProspectBlocks.Decided(bindery, dates, planned.Step.Item.Id, planned.Step.Item.Party) is { IsEmpty: false } said ? [Sides.Line(bindery, "left-decided", said)] : [];

    private static ImmutableArray<SideLine> Spare(Bindery bindery, PlannedStep planned) => planned.Dates switch
    {
        null or { Done: true } => [],
        _ => [Sides.Line(bindery, "left-spare", Phrase.Of(Sides.Spare(bindery, planned)))],
    };

    // A list of signs becomes boxes to tick; words stay words, with one box for the task as a whole.
    private static ImmutableArray<Block> Done(Bindery bindery, Step step)
    {
        var said = bindery.Read(step.DoneWhen, 2);
        var signs = said.OfType<Block.Listing>().SelectMany(l => l.Items).Select(i => Phrase.Join(" ", i.OfType<Block.Prose>().Select(p => p.Words))).ToList();
        var whole = new Tick($"done-{step.Id}", Phrase.Of(bindery.Say("tick-done", ("task", bindery.Mark(step.Title)))));
        return said.IsEmpty && !step.IsDuty
            ? []
            : [.. said.Where(b => b is not Block.Listing), new Block.Ticks([.. signs.Select((s, i) => new Tick(Invariant($"done-{step.Id}-{i + 1}"), s)), whole])];
    }

    // What others ask, in the nation's own money.
    private static IEnumerable<Phrase> Instead(Bindery bindery, Step step) =>
        from id in step.InsteadPays
        let cost = bindery.Plan.Costs.FirstOrDefault(c => c.Cost.Item.Id == id)
        where cost is not null && cost.Price.Currency == bindery.Plan.Money.Currency
        select bindery.Labels.Compose("step-instead-asks", ("line", bindery.Words(cost.Cost.Item.Title)), ("range", Phrase.Of(bindery.Money(cost.Gross))));

    private static Phrase Pay(Bindery bindery, string cost) =>
        bindery.Link(cost) + Phrase.Of(": " + bindery.Money(bindery.Items.Cost(cost)!.Gross));

    private static IEnumerable<string> Followers(Bindery bindery, Step step) =>
        bindery.Plan.Steps.Where(s => s.Step.IsPresent && s.Step.Item.After.Any(l => l.Step == step.Id)).Select(s => s.Step.Item.Id);
}
