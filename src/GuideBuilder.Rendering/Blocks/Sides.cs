using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The lines of the left column, the same for every kind of entry: who, when, how sure, because.</summary>
internal static class Sides
{
    /// <summary>The four lines of a step.</summary>
    internal static ImmutableArray<SideLine> OfStep(Bindery bindery, PlannedStep step) =>
    [
        Who(bindery, step.Step.Item.Party), When(bindery, step), HowSure(bindery, step.Step.State, step.Step.Because), Why(bindery, step.Step.Because),
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

    /// <summary>The letter that goes with a step; nothing when there is none or it has nothing to say.</summary>
    internal static ImmutableArray<SideLine> Letter(Bindery bindery, Step step) =>
        step.Letter is { } id && !bindery.LeftOut.Contains(id) ? [Line(bindery, "left-letter", CoverBlocks.LetterLink(bindery, id))] : [];

    /// <summary>Settled, or what would settle it.</summary>
    internal static SideLine HowSure(Bindery bindery, ItemState state, Because because) => Line(bindery, "left-how-sure", state switch
    {
        ItemState.Settled => Phrase.Of(bindery.Say("sure-settled")),
        ItemState.Open => bindery.Labels.Compose("sure-open", ("questions", Settling(bindery, because))),
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

    /// <summary>The questions that would settle an open item, as links.</summary>
    internal static Phrase Settling(Bindery bindery, Because because) => Phrase.Join(", ", because.Unsettled.Select(bindery.Link));

    private static Phrase Dated(Bindery bindery, PlannedStep step)
    {
        if (step.Dates is not { } dates)
        {
            return Phrase.Of(bindery.Say("date-open"));
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
        return dates.BookBy < dates.EarliestStart ? given + bindery.Labels.Compose("date-book-by", ("date", bindery.Dates.SayShort(dates.BookBy))) : given;
    }
}
