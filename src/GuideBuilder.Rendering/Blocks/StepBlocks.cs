using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The steps of the chosen way: all of them, and the household's own.</summary>
internal static class StepBlocks
{
    // The step's own page names them all.
    private const int QuestionsNamed = 1;

    /// <summary>Every present step in order of its earliest start, then those that may apply without a date.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery) => [.. InOrder(bindery.Plan).Select(s => Entry(bindery, s))];

    /// <summary>The household's steps as boxes to tick, each with its link and what shows that it is done; while a stop sign stands all but those that deal with it are only named.</summary>
    internal static ImmutableArray<Block> Duties(Bindery bindery)
    {
        var duties = InOrder(bindery.Plan).Where(s => s.Step.Item.IsDuty).ToLookup(s => !bindery.Plan.IsSuspended || bindery.Plan.StopSteps.Contains(s.Step.Item.Id));
        return [.. duties[true].Select(s => Duty(bindery, s)), .. Make.Under(bindery, "duties-wait", Make.List(duties[false].Select(s => bindery.Link(s.Step.Item.Id))))];
    }

    /// <summary>Steps while the house is without supply, and how long that is.</summary>
    internal static ImmutableArray<Block> OffSupply(Bindery bindery) =>
    [
        Make.Say(bindery, "off-supply-hours", ("hours", bindery.Ranges.Hours(bindery.Plan.Schedule.OffSupplyHours))),
        .. Make.List(InOrder(bindery.Plan).Where(s => s.Step.Item.SupplyOff).Select(s => DarkStep(bindery, s.Step.Item.Id))),
    ];

    /// <summary>Present steps: dated ones by their earliest start, those of a works day by their turns, then undated ones.</summary>
    internal static IEnumerable<PlannedStep> InOrder(Plan plan) =>
        TurnOrder.Of(plan.Steps.Where(s => s.Step.IsPresent).OrderBy(s => s.Dates?.EarliestStart ?? LocalDate.MaxIsoValue).ThenBy(s => s.Dates?.EarliestFinish ?? LocalDate.MaxIsoValue), byDay: true);

    private static Phrase DarkStep(Bindery bindery, string id) =>
        DayBlocks.IsInTimetable(bindery, id) ? bindery.Link(id) : bindery.Labels.Compose("off-supply-may", ("step", bindery.Link(id)));

    private static Block.Entry Entry(Bindery bindery, PlannedStep step) =>
        new Block.Entry(null, 1, bindery.Link(step.Step.Item.Id), bindery.Read(step.Step.Item.About), Sides.OfStep(bindery, step, QuestionsNamed));

    private static Block.Entry Duty(Bindery bindery, PlannedStep step)
    {
        var item = step.Step.Item;
        ImmutableArray<Block> text =
        [
            .. bindery.Read(item.About),
            .. Make.Under(bindery, "step-done-when", [.. bindery.Read(item.DoneWhen), new Block.Ticks([new Tick($"done-{item.Id}", Phrase.Of(bindery.Say("tick-done", ("task", bindery.Mark(item.Title)))))])], 2),
            .. Make.Under(bindery, "step-who-instead", item.WhoInstead, 2),
        ];
        return new Block.Entry(null, 1, bindery.Link(item.Id), text, Sides.OfStep(bindery, step, QuestionsNamed));
    }
}
