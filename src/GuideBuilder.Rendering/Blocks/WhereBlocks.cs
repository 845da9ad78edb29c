using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Where the household is: what has happened, what is late, what is next and by when, and what stands before a payment.</summary>
internal static class WhereBlocks
{
    private const int EventsShown = 3;
    private const int NextShown = 5;
    private const int NextInShort = 3;

    /// <summary>For the cover: done so far, the last happenings, what is late and, once something has happened, what is next; why the wished day is missed; and whether the works day may be fixed.</summary>
    internal static ImmutableArray<Block> InShort(Bindery bindery)
    {
        var plan = bindery.Plan;
        if (plan.Occasion.Edition == EditionKind.Public || plan.IsSuspended)
        {
            return SoFar(bindery);
        }

        return
        [
            .. SoFar(bindery),
            .. plan.Answers.Log.IsEmpty ? [] : Ahead(bindery, NextInShort),
            .. ProspectBlocks.InShort(bindery),
            .. Held(bindery),
        ];
    }

    /// <summary>For the cover: what is still open before each payment, by whoever answers it; while a stop sign stands, that nothing is to be paid.</summary>
    internal static ImmutableArray<Block> BeforeYouPay(Bindery bindery) => bindery.Plan.IsSuspended ? [Make.Say(bindery, "stop-pay-nothing")] :
        bindery.Plan.Whereabouts.Gates.Select(g => g.Payment).Distinct(StringComparer.Ordinal).SelectMany(p => GatesInShort(bindery, p)).ToImmutableArray() is { IsEmpty: false } gates ? [.. gates, .. QuotationBlocks.Outside(bindery)] : [Make.Say(bindery, "gates-no-payment")];

    private static ImmutableArray<Block> SoFar(Bindery bindery)
    {
        var (plan, where) = (bindery.Plan, bindery.Plan.Whereabouts);
        return plan.Occasion.Edition == EditionKind.Public ? [] :
        [
            new Block.Prose(bindery.Labels.Compose("where-count", ("done", Count(where.Done)), ("all", Count(where.Dated)), ("today", bindery.Dates.Say(plan.Occasion.Today)))),
            .. Make.List(plan.Answers.Log.Reverse().Take(EventsShown).Select(e => LogWords.Of(bindery, e))),
            .. Dark(bindery, where),
            .. Make.Under(bindery, "where-late", Make.List([.. where.Late.Select(l => Late(bindery, l)), .. where.Clocks.Where(IsLate).Select(c => ClockBlocks.Line(bindery, c))])),
        ];
    }

    /// <summary>The same, with what is next, what cannot be kept, and the gates before each payment.</summary>
    internal static ImmutableArray<Block> WhereYouAre(Bindery bindery)
    {
        var where = bindery.Plan.Whereabouts;
        return bindery.Plan.IsSuspended ? SoFar(bindery) :
        [
            .. SoFar(bindery),
            .. Ahead(bindery, NextShown),
            .. Held(bindery),
            .. where.Gates.Select(g => g.Payment).Distinct(StringComparer.Ordinal).SelectMany(p => Make.Under(bindery, "gates-head", GatesOf(bindery, p))),
        ];
    }

    /// <summary>The gates before a payment that are not done, beside what it comes to; nothing for a step that pays for no acceptance.</summary>
    internal static ImmutableArray<Block> GatesOf(Bindery bindery, string payment)
    {
        var open = OpenBefore(bindery, payment);
        return bindery.Plan.Whereabouts.Gates.All(g => g.Payment != payment) ? [] :
        [
            Lead(bindery, payment, open),
            .. open.Count == 0 ? [] : Make.Grid(bindery, "gates-caption", ["column-what", "column-state", "column-expected"], open.Select(g => Row(bindery, g))),
        ];
    }

    // The same by whoever answers, the household first: a line for each gate, and what may not apply at the end of each.
    private static ImmutableArray<Block> GatesInShort(Bindery bindery, string payment)
    {
        var open = OpenBefore(bindery, payment);
        string PartyOf(Gate gate) => bindery.Items.Step(gate.Step)!.Step.Item.Party;
        var byParty = open.GroupBy(PartyOf, StringComparer.Ordinal).OrderByDescending(g => g.Key == Party.Household);
        return
        [
            Lead(bindery, payment, open),
            .. open.Count == 0 ? ImmutableArray<Block>.Empty : [new Block.Definitions([.. byParty.Select(g => new Definition(null, bindery.Link(g.Key), Make.List(g.OrderBy(o => o.State == GateState.MayApply).Select(o => Line(bindery, o)))))])],
        ];
    }

    private static Phrase Line(Bindery bindery, Gate gate) =>
        gate.State == GateState.MayApply ? bindery.Labels.Compose("gate-if-it-applies", ("step", bindery.Link(gate.Step))) : bindery.Link(gate.Step);

    private static List<Gate> OpenBefore(Bindery bindery, string payment) => [.. bindery.Plan.Whereabouts.Gates.Where(g => g.Payment == payment && g.State != GateState.Done)];

    private static Block.Prose Lead(Bindery bindery, string payment, List<Gate> open)
    {
        var paid = bindery.Items.Step(payment) is { Dates.Done: true };
        var lead = open.Count == 0 ? "gates-none" : paid ? "gates-taken" : open.Exists(g => g.State == GateState.MayApply) ? "gates-open-some" : "gates-open";
        return new(bindery.Labels.Compose(lead, ("step", bindery.Link(payment)), ("count", Count(open.Count)), ("some", Count(open.Count(g => g.State == GateState.MayApply))), ("sum", Sum(bindery, payment))));
    }

    private static ImmutableArray<Block> Ahead(Bindery bindery, int shown)
    {
        var where = bindery.Plan.Whereabouts;
        return
        [
            .. Make.Under(bindery, "where-conflicts", Make.List(where.Conflicts.DistinctBy(c => (bindery.Items.Step(c.Step)?.Step.Item.Meeting ?? c.Step, c.Given)).Select(c => Conflict(bindery, c)))),
            .. Make.Under(bindery, "where-next", Make.List(where.Next.Take(shown).Select(n => Next(bindery, n)))),
        ];
    }

    private static IEnumerable<Block> Held(Bindery bindery) => bindery.Plan.Schedule.Meetings.Where(m => m.IsHeld).Select(m => new Block.Prose(DayBlocks.Held(bindery, m)));

    private static ImmutableArray<Block> Dark(Bindery bindery, Whereabouts where) => where.DarkSince is { } since
        ? [new Block.Prose(bindery.Labels.Compose("where-dark", ("date", bindery.Dates.Say(since)), ("off-supply", Page(bindery, "off-supply")), ("wrong", Page(bindery, "if-it-goes-wrong"))))]
        : [];

    private static Phrase Page(Bindery bindery, string id) =>
        bindery.Outline.FirstOrDefault(l => l.Id == id) is { } line ? Bindery.Link(id, line.Title) : Phrase.Empty;

    private static bool IsLate(RunningClock clock) => clock is { DaysLate: > 0, Ended: null };

    private static Phrase Late(Bindery bindery, LateItem late) => bindery.Labels.Compose(
        LabelOf(late.Because),
        ("step", bindery.Link(late.Step)),
        ("date", bindery.Dates.Say(late.Since)),
        ("days", Phrase.Of($"{Figures.Plain(late.Days)} {bindery.Labels.Count("unit-calendar-day", late.Days)}")));

    private static string LabelOf(LateBecause because) => because switch
    {
        LateBecause.DatePassed => "late-date-passed",
        LateBecause.LastDayPassed => "late-last-day",
        LateBecause.QuotationEnded => "late-quotation",
        LateBecause.Missed => "late-missed",
        _ => throw new UnreachableException(),
    };

    private static Phrase Conflict(Bindery bindery, DateConflict conflict) => bindery.Labels.Compose(
        conflict.Earliest is null ? "conflict-closed" : conflict.Chain.IsEmpty ? "conflict-alone" : "conflict-earliest",
        ("step", bindery.Link(conflict.Step)),
        ("date", bindery.Dates.Say(conflict.Given)),
        ("earliest", conflict.Earliest is { } day ? bindery.Dates.Say(day) : Phrase.Empty),
        ("chain", Phrase.Join(", ", conflict.Chain.Select(bindery.Link))));

    private static Phrase Next(Bindery bindery, NextItem next) => bindery.Labels.Compose(
        bindery.Plan.Schedule.NeededBy is null ? "next-keeps" : "next-by", ("step", bindery.Link(next.Step)), ("who", bindery.Link(bindery.Items.Step(next.Step)!.Step.Item.Party)), ("date", bindery.Dates.Say(next.By)));

    private static GridRow Row(Bindery bindery, Gate gate) => Make.Row(
        null,
        bindery.Link(gate.Step),
        Phrase.Of(bindery.Say(LabelOf(gate.State))),
        gate.Expected is { } day ? bindery.Dates.SayShort(day) : Phrase.Of(bindery.Say("date-open")));

    private static string LabelOf(GateState state) => state switch
    {
        GateState.Done => "gate-done",
        GateState.NotYet => "gate-not-yet",
        GateState.MayApply => "gate-may-apply",
        GateState.LeftOpen => "gate-left-open",
        _ => throw new UnreachableException(),
    };

    // What the lines that fall due with the payment come to in the trials.
    private static Phrase Sum(Bindery bindery, string payment) =>
        Phrase.Of(bindery.Plan is { IsCounted: true } plan && plan.Whereabouts.Payments.FirstOrDefault(p => p.Step == payment) is { Sum: { High: > 0 } sum } ? bindery.Ranges.Half(sum, plan.Money.Currency) : bindery.Say("sum-not-known"));

    private static Phrase Count(int number) => Phrase.Of(Figures.Plain(number));
}
