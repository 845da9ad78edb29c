using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Whether the wished date can be met, what decides the date, and what would have to give.</summary>
internal static class ProspectBlocks
{
    /// <summary>The last safe day, the chain of reasons, and the smallest change where the date is missed.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var schedule = bindery.Plan.Schedule;
        var missed = schedule.Feasibility is Feasibility.OnlyIfQuick or Feasibility.NotPossible;
        return
        [
            .. schedule.LastSafe is { } safe ? [new Block.Prose(LastSafe(bindery, safe))] : ImmutableArray<Block>.Empty,
            .. missed ? [new Block.Prose(Change(bindery, schedule.Change, "change-none"))] : ImmutableArray<Block>.Empty,
            .. LimitBlocks.All(bindery),
            .. Make.Under(bindery, "prospect-chain", Make.List(schedule.DrivingSteps.Select(id => Link(bindery, id)), numbered: true)),
            .. ByRule(bindery),
        ];
    }

    /// <summary>For the cover, where the date is missed: the chain in a line, and the smallest change.</summary>
    internal static ImmutableArray<Block> InShort(Bindery bindery)
    {
        var schedule = bindery.Plan.Schedule;
        return schedule.Feasibility is not (Feasibility.OnlyIfQuick or Feasibility.NotPossible) ? LimitBlocks.All(bindery) :
        [
            .. LimitBlocks.All(bindery),
            new Block.Prose(bindery.Labels.Compose("prospect-why", ("chain", Phrase.Join("; ", schedule.DrivingSteps.Select(bindery.Link))))),
            new Block.Prose(Change(bindery, schedule.Change, "change-none")),
        ];
    }

    // Past the last day for which the list of holidays is certain the plan rests on rules, and a proclaimed day is not in it.
    private static ImmutableArray<Block> ByRule(Bindery bindery)
    {
        var known = bindery.Guidance.Tables.Holidays.FirstOrDefault(h => h.Id == bindery.Plan.Nation.Holidays)?.KnownUntil;
        return bindery.Plan.Occasion.Edition != EditionKind.Public && known < bindery.Plan.Schedule.Finish.Late ? [new Block.Prose(bindery.Labels.Compose("holidays-by-rule", ("date", bindery.Dates.SayShort(known.Value))))] : [];
    }

    /// <summary>What decides the start of a dated step that is still to come; empty for any other.</summary>
    internal static Phrase Decided(Bindery bindery, StepDates dates, string step, string party)
    {
        if (LabelOf(dates.Decider) is not { } label)
        {
            return Phrase.Empty;
        }

        var said = bindery.Labels.Compose(label, ("step", (dates.Decider == Decider.NotBefore ? dates.Via ?? step : dates.DrivenBy) is { } id ? bindery.Link(id) : Phrase.Empty), ("date", bindery.Dates.SayShort(dates.FreeFrom)));
        return dates.FreeFrom < dates.EarliestStart && dates.Decider is Decider.Finish or Decider.OtherStart
            ? said + Phrase.Of(" ") + bindery.Labels.Compose("decided-calendar", ("party", bindery.Link(party)), ("date", bindery.Dates.SayShort(dates.EarliestStart)))
            : said;
    }

    private static Phrase LastSafe(Bindery bindery, LastSafeDay safe) => bindery.Labels.Compose(
        safe.Day < bindery.Plan.Occasion.Today ? "prospect-too-late" : "prospect-last-safe", ("step", bindery.Link(safe.Step)), ("date", bindery.Dates.Say(safe.Day)));

    private static Phrase Link(Bindery bindery, string id)
    {
        var dates = bindery.Items.Step(id)!.Dates!;
        var said = bindery.Link(id) + Phrase.Of(": ") + bindery.Dates.Span(dates.EarliestStart, dates.EarliestFinish) + Phrase.Of(". ");
        return said + Decided(bindery, dates, id, bindery.Items.Step(id)!.Step.Item.Party);
    }

    /// <summary>The smallest single change, or that there is none.</summary>
    internal static Phrase Change(Bindery bindery, SmallestChange? smallest, string none) => smallest is not { } change
        ? Phrase.Of(bindery.Say(none))
        : bindery.Labels.Compose(
            LabelOf(change.Of),
            ("step", change.Step is { } step ? bindery.Link(step) : Phrase.Empty),
            ("other", change.Other is { } other ? bindery.Link(other) : Phrase.Empty),
            ("date", bindery.Plan.Schedule.NeededBy is { } day ? bindery.Dates.Say(day.PlusDays(change.Days)) : Phrase.Empty),
            ("days", Phrase.Of($"{Figures.Plain(change.Days)} {bindery.Labels.Count("unit-day", change.Days)}")));

    private static string? LabelOf(Decider decider) => decider switch
    {
        Decider.Start => "decided-start",
        Decider.NotBefore => "decided-not-before",
        Decider.Finish => "decided-finish",
        Decider.OtherStart => "decided-other-start",
        Decider.Within => "decided-within",
        Decider.Given => "decided-given",
        Decider.Done or Decider.Untold => null,
        _ => throw new UnreachableException(),
    };

    private static string LabelOf(ChangeOf change) => change switch
    {
        ChangeOf.Wait => "change-wait",
        ChangeOf.EarlierStart => "change-earlier-start",
        ChangeOf.GivenDate => "change-given-date",
        ChangeOf.Duration => "change-duration",
        ChangeOf.Validity => "change-validity",
        ChangeOf.NeededBy => "change-needed-by",
        ChangeOf.Weekdays => "change-weekdays",
        _ => throw new UnreachableException(),
    };
}
