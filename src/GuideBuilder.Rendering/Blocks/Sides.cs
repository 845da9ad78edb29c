using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The lines of the left column, the same for every kind of entry: who, when, how sure, because.</summary>
internal static class Sides
{
    /// <summary>The four lines of a step; in lists of many steps not more than so many of the questions that would settle it.</summary>
    internal static ImmutableArray<SideLine> OfStep(Bindery bindery, PlannedStep step, int most = int.MaxValue) =>
    [
        Who(bindery, step.Step.Item.Party), When(bindery, step), HowSure(bindery, step.Step.State, step.Step.Because, most), Why(bindery, step.Step.Because),
    ];

    /// <summary>How sure and because, for any item of the plan.</summary>
    internal static ImmutableArray<SideLine> Of<T>(Bindery bindery, Planned<T> planned)
        where T : Rule => [HowSure(bindery, planned.State, planned.Because), Why(bindery, planned.Because)];

    /// <summary>Who does it.</summary>
    internal static SideLine Who(Bindery bindery, string party) => new(bindery.Say("left-who"), bindery.Link(party));

    /// <summary>A line of its own label.</summary>
    internal static SideLine Line(Bindery bindery, string label, Phrase says) => new(bindery.Say(label), says);

    /// <summary>When a step can run, and by when to book it.</summary>
    internal static SideLine When(Bindery bindery, PlannedStep step) => Line(bindery, "left-when", Dated(bindery, step));

    /// <summary>The same, with the day after which the wished date, or the plan's own finish, is lost.</summary>
    internal static SideLine WhenAtLatest(Bindery bindery, PlannedStep step) =>
        step.Dates is { Done: false, DateGiven: null } dates && dates.LatestFinish > dates.EarliestFinish
            ? Line(bindery, "left-when", Dated(bindery, step) + bindery.Labels.Compose("date-at-latest", ("date", bindery.Dates.SayShort(dates.LatestFinish))))
            : When(bindery, step);

    /// <summary>The letter that goes with a step; nothing when there is none or it has nothing to say.</summary>
    internal static ImmutableArray<SideLine> Letter(Bindery bindery, Step step) => step.Letter is { } id ? LetterOf(bindery, id) : [];

    /// <summary>A letter by its id; nothing when this plan has none of that id.</summary>
    internal static ImmutableArray<SideLine> LetterOf(Bindery bindery, string id) =>
        !bindery.LeftOut.Contains(id) && bindery.Guidance.Letters.Any(l => l.Id == id) ? [Line(bindery, "left-letter", CoverBlocks.LetterLink(bindery, id))] : [];

    /// <summary>Settled, or what would settle it.</summary>
    internal static SideLine HowSure(Bindery bindery, ItemState state, Because because, int most = int.MaxValue) => Line(bindery, "left-how-sure", state switch
    {
        ItemState.Settled => Phrase.Of(bindery.Say("sure-settled")),
        ItemState.Open => bindery.Labels.Compose("sure-open", ("questions", Settling(bindery, because, most))),
        ItemState.RuledOut => Phrase.Of(bindery.Say("sure-ruled-out")),
        _ => throw new UnreachableException(),
    });

    /// <summary>The rule's own reason, as the link to how it was worked out.</summary>
    internal static SideLine Why(Bindery bindery, Because because)
    {
        var reason = because.Reason.IsEmpty ? Phrase.Of(bindery.Say("because-nothing")) : bindery.ReadLine(because.Reason);
        if (bindery.Items.SharesReason(because) && bindery.Items.Find(because.RuleId) is { } rule)
        {
            // The same words must not link to two places, so the item's title tells them apart.
            reason += Phrase.Of(" (") + bindery.Words(rule.Title) + Phrase.Of(")");
        }

        var linked = reason.Parts.Any(p => p is Inline.Link) ? reason : Phrase.Of(new Inline.Link(new Target.Reason(because.RuleId), reason));
        return Line(bindery, "left-because", linked);
    }

    /// <summary>What a dated step has to spare: only a step of the driving chain is said to decide the finish, and the turns of a meeting have it in common.</summary>
    internal static string Spare(Bindery bindery, PlannedStep step)
    {
        var together = step.Step.Item.Meeting is not { } meeting ? [step] : bindery.Plan.Steps.Where(s => s.Step.Item.Meeting == meeting && s.Dates is { Done: false }).DefaultIfEmpty(step).ToArray();
        var spare = together.Min(s => s.Dates!.TotalFloat);
        return together.Any(s => bindery.Plan.Schedule.DrivingSteps.Contains(s.Step.Item.Id))
                ? bindery.Plan.Schedule.NeededBy is not null && spare > 0 ? bindery.Say("spare-decides-until", ("date", bindery.Dates.Short(together.Min(s => s.Dates!.LatestFinish)))) : bindery.Say("spare-decides")
            : spare <= 0 ? bindery.Say("spare-nothing")
            : $"{Figures.Plain(spare)} {bindery.Labels.Count("unit-working-day", spare)}";
    }

    /// <summary>The questions that would settle an open item, as links.</summary>
    internal static Phrase Settling(Bindery bindery, Because because, int most = int.MaxValue)
    {
        var more = because.Unsettled.Count() - most;
        return Phrase.Join(", ", because.Unsettled.Take(most).Select(bindery.Link)) + (more > 0 ? Phrase.Of(bindery.Labels.Count("settles-more", more)) : Phrase.Empty);
    }

    // What follows the first works day falls out of it and is not booked beforehand.
    private static bool IsAfterTheDay(Bindery bindery, StepDates dates) => bindery.Plan.Schedule.Meetings.Any(m => m.Day < dates.EarliestStart);

    private static Phrase Dated(Bindery bindery, PlannedStep step)
    {
        if (step.Dates is not { } dates)
        {
            return Phrase.Of(bindery.Say(!bindery.Plan.IsSuspended ? "date-open" : bindery.Plan.StopSteps.Contains(step.Step.Item.Id) ? "date-now" : "date-suspended"));
        }

        if (dates.Done)
        {
            return bindery.Labels.Compose("date-done", ("date", bindery.Dates.Say(dates.EarliestFinish)));
        }

        if (bindery.Plan.Schedule.Meetings.Any(m => m.IsHeld && m.Meeting == step.Step.Item.Meeting))
        {
            return Phrase.Of(bindery.Say("date-held"));
        }

        var given = dates.DateGiven is { } day ? bindery.Labels.Compose("date-given", ("date", bindery.Dates.Say(day))) : bindery.Dates.Span(dates.EarliestStart, dates.EarliestFinish);
        return dates.BookBy < dates.EarliestStart && dates.BookBy >= bindery.Plan.Occasion.Today && !IsAfterTheDay(bindery, dates) ? given + bindery.Labels.Compose("date-book-by", ("date", bindery.Dates.SayShort(dates.BookBy))) : given;
    }
}
