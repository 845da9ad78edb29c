using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The lines of the left column, the same for every kind of entry: who, when, how sure, because.</summary>
internal static class Sides
{
    // In a list; the item's own page names them all.
    private const int QuestionsNamed = 2;

    /// <summary>The four lines of a step, on its own page.</summary>
    internal static ImmutableArray<SideLine> OfStep(Bindery bindery, PlannedStep step) =>
    [
        Who(bindery, step.Step.Item.Party), When(bindery, step), .. Of(bindery, step.Step),
    ];

    /// <summary>The lines of a duty in a list of the household's own: when, who else could do it, how sure, and why in plain words; its own page says the rest.</summary>
    internal static ImmutableArray<SideLine> OfDuty(Bindery bindery, PlannedStep step) =>
    [
        When(bindery, step),
        .. step.Step.Item.WhoInstead.IsEmpty ? [] : ImmutableArray.Create(Line(bindery, "left-instead", bindery.ReadLine(step.Step.Item.WhoInstead))),
        HowSure(bindery, step.Step.State, step.Step.Because, QuestionsNamed),
        Reason(bindery, step.Step.Because),
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

    /// <summary>The rule's own reason, as the link to how it was worked out. Where others give the same reason, the link also says, unseen, whose it is: the same words must not lead to two places.</summary>
    internal static SideLine Why(Bindery bindery, Because because)
    {
        var reason = Said(bindery, because);
        if (reason.Parts.Any(p => p is Inline.Link))
        {
            return Line(bindery, "left-because", reason);
        }

        if (bindery.Items.SharesReason(because) && bindery.Items.Find(because.RuleId) is { } rule)
        {
            reason += Phrase.Of(new Inline.Unseen(Phrase.Of(" (") + bindery.Words(rule.Title) + Phrase.Of(")")));
        }

        return Line(bindery, "left-because", Phrase.Of(new Inline.Link(new Target.Reason(because.RuleId), reason)));
    }

    /// <summary>The rule's own reason in plain words, in lists of what has a page of its own.</summary>
    internal static SideLine Reason(Bindery bindery, Because because) => Line(bindery, "left-because", Said(bindery, because));

    /// <summary>Why an item is in the plan. A reason may end in the words for an answer that is missing, which are said only while one is.</summary>
    internal static LocalText ReasonOf(Bindery bindery, Because because)
    {
        var unlessKnown = Tongues.Plain(bindery.Say("because-or-not-known"));
        return bindery.Items.State(because.RuleId) == ItemState.Settled && because.Reason.Words.TrimEnd().EndsWith(unlessKnown, StringComparison.Ordinal)
            ? because.Reason with { Words = because.Reason.Words.TrimEnd()[..^unlessKnown.Length] + "." }
            : because.Reason;
    }

    private static Phrase Said(Bindery bindery, Because because) =>
        because.Reason.IsEmpty ? Phrase.Of(bindery.Say("because-nothing")) : bindery.ReadLine(ReasonOf(bindery, because));

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
