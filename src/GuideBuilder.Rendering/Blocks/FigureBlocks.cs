using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The four figures of the cover, each as a range rounded outward, and whether the wished day can be met.</summary>
internal static class FigureBlocks
{
    /// <summary>Cost, finish, hours off supply and the household's own hours; none while a stop sign stands.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var plan = bindery.Plan;
        return plan.IsSuspended ? [Make.Say(bindery, "figure-suspended")] :
        [
            new Block.Definitions(
            [
                Cost(bindery),
                One(bindery, CoverBlocks.MovesNothing(bindery) ? "figure-finish-stays" : "figure-finish", Finish(bindery)),
                One(bindery, "figure-off-supply", OffSupply(bindery)),
                One(bindery, "figure-own-hours", Phrase.Of(bindery.Ranges.Hours(Figures.Whole(plan.Schedule.HouseholdHours)))),
            ]),
            .. Needed(bindery),
            .. MaybeBeyond(bindery),
        ];
    }

    /// <summary>What it may cost, as a range.</summary>
    internal static Definition Cost(Bindery bindery) => One(bindery, "figure-cost", Sums(bindery));

    // While it is not known whether the home is beyond what can be counted: the answers on which that hangs.
    private static IEnumerable<Block> MaybeBeyond(Bindery bindery)
    {
        if (bindery.Plan.Facts.Derived.GetValueOrDefault(Plan.BeyondFact) is not { Standing: Standing.Unknown } maybe)
        {
            return [];
        }

        var open = bindery.Plan.OpenQuestions.Select(q => q.Question.Name).ToFrozenSet(StringComparer.Ordinal);
        var questions = maybe.Because.Unsettled.Select(q => open.Contains(q.Name) ? bindery.Link(q) : bindery.Words(q.Label));
        return [new Block.Prose(bindery.Labels.Compose("beyond-maybe", ("questions", Phrase.Join("; ", questions))))];
    }

    private static Definition One(Bindery bindery, string label, Phrase says) => new(null, Phrase.Of(bindery.Say(label)), [new Block.Prose(says)]);

    // What one and nine in ten trials do not exceed, and the middle one; without trials, the range of the plan.
    private static Phrase Sums(Bindery bindery)
    {
        var currency = bindery.Plan.Money.Currency;
        return bindery.Plan is { IsCounted: true, Chances.Cost: { } cost }
            ? bindery.Labels.Compose("figure-chance", ("from", Sum(Figures.Down(cost.P10))), ("to", Sum(Figures.Up(cost.P90))), ("middle", Sum(Figures.Near(cost.P50))))
            : bindery.Total(bindery.Plan.Money.Gross);

        Phrase Sum(decimal sum) => Phrase.Of(Figures.Exact(sum, currency));
    }

    private static Phrase Finish(Bindery bindery)
    {
        if (bindery.Plan is { IsCounted: true, Chances.Finish: { } finish })
        {
            var range = bindery.Dates.Range(new DateRange(finish.P10, finish.P50, finish.P90));
            return finish.P10 == finish.P90 ? range : range + bindery.Labels.Compose("figure-finish-middle", ("date", bindery.Dates.SayShort(finish.P50)));
        }

        var said = bindery.Finish(bindery.Plan.Schedule.Finish);
        return !bindery.Plan.IsCounted ? said : said + bindery.Labels.Compose("figure-finish-likely", ("date", bindery.Dates.SayShort(bindery.Plan.Schedule.Finish.Likely)));
    }

    private static Phrase OffSupply(Bindery bindery) => bindery.Plan.Whereabouts.DarkSince is { } since
        ? bindery.Labels.Compose("figure-dark", ("date", bindery.Dates.Say(since)))
        : Phrase.Of(bindery.Ranges.Hours(bindery.Plan.Schedule.OffSupplyHours));

    private static IEnumerable<Block> Needed(Bindery bindery)
    {
        var schedule = bindery.Plan.Schedule;
        if (!bindery.Plan.IsCounted || bindery.Plan.Whereabouts.DarkSince is not null || schedule.NeededBy is not { } day || schedule.ReadyOn is not { } ready)
        {
            return [];
        }

        if (!bindery.Plan.Whereabouts.Conflicts.IsEmpty)
        {
            return [Make.Say(bindery, "needed-conflict")];
        }

        var asked = bindery.Labels.Compose(LabelOf(schedule.NeededFor), ("date", bindery.Dates.Say(day)));
        var said = asked + Phrase.Of(" " + bindery.Say(LabelOf(schedule.Feasibility)) + " ") + bindery.Labels.Compose("needed-ready", ("ready", bindery.Dates.SayShort(ready)));
        return [new Block.Prose(bindery.Plan is { Occasion.Edition: not EditionKind.Public, Chances.MeetsDate: { } share } ? said + Phrase.Of(" ") + Phrase.Of(Share(bindery, share)) : said)];
    }

    private static string Share(Bindery bindery, double share) => Math.Round(share * 10, MidpointRounding.AwayFromZero) switch
    {
        <= 0 => bindery.Say("meets-hardly"),
        >= 10 => bindery.Say("meets-nearly"),
        var tenths => bindery.Say("meets-tenths", ("n", Invariant($"{tenths:0}"))),
    };

    private static string LabelOf(NeededFor what) => what switch
    {
        NeededFor.PowerOn => "needed-power",
        NeededFor.PlaceFree => "needed-place",
        _ => throw new UnreachableException(),
    };

    private static string LabelOf(Feasibility feasibility) => feasibility switch
    {
        Feasibility.NoDate => "feasible-no-date",
        Feasibility.MetEvenIfSlow => "feasible-even-if-slow",
        Feasibility.MetIfLikely => "feasible-if-likely",
        Feasibility.OnlyIfQuick => "feasible-only-if-quick",
        Feasibility.NotPossible => "feasible-not",
        _ => throw new UnreachableException(),
    };
}
