using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The steps of the chosen way: all of them, and the household's own.</summary>
internal static class StepBlocks
{
    // The step's own page names them all.
    private const int QuestionsNamed = 1;

    /// <summary>The present steps that have no date, which the calendar therefore leaves out: those that only may apply, and in a plan without dates all of them.</summary>
    internal static ImmutableArray<Block> Undated(Bindery bindery)
    {
        var undated = InOrder(bindery.Plan).Where(s => s.Dates is null).ToList();
        return undated.Count == 0 ? [] : Make.Under(bindery, "undated-head", Make.Grid(bindery, "undated-caption", ["column-step", "column-who", "column-settled-by"], undated.Select(s => Row(bindery, s))));
    }

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

    private static GridRow Row(Bindery bindery, PlannedStep step) =>
        Make.Row(null, bindery.Link(step.Step.Item.Id), bindery.Link(step.Step.Item.Party), Sides.Settling(bindery, step.Step.Because, QuestionsNamed));

    private static Block.Entry Duty(Bindery bindery, PlannedStep step)
    {
        var item = step.Step.Item;
        ImmutableArray<Block> text =
        [
            .. bindery.Read(item.About),
            .. item.DoneWhen.IsEmpty ? [] : DoneWhen(bindery, item),
            new Block.Ticks([new Tick($"done-{item.Id}", Phrase.Of(bindery.Say("tick-done", ("task", bindery.Mark(item.Title)))))]),
        ];
        return new Block.Entry(null, 1, bindery.Link(item.Id), text, Sides.OfDuty(bindery, step));
    }

    // In a line with its first paragraph: thirty headings of the same words lead nobody anywhere.
    private static ImmutableArray<Block> DoneWhen(Bindery bindery, Step step)
    {
        var lead = Phrase.Of(new Inline.Strong(Phrase.Of(bindery.Say("duty-done-when")))) + Phrase.Of(" ");
        return bindery.Read(step.DoneWhen, 2) is [Block.Prose first, .. var rest] ? [new Block.Prose(lead + first.Words), .. rest] : [new Block.Prose(lead), .. bindery.Read(step.DoneWhen, 2)];
    }
}
