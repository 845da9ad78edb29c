using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The four figures of the cover, each as a range rounded outward, and whether the wished day can be met.</summary>
internal static class FigureBlocks
{
    /// <summary>Cost, finish, hours off supply and the household's own hours.</summary>
    internal static ImmutableArray<Block> All(Bindery bindery)
    {
        var plan = bindery.Plan;
        return
        [
            new Block.Definitions(
            [
                Cost(bindery),
                One(bindery, "figure-finish", Finish(bindery)),
                One(bindery, "figure-off-supply", Phrase.Of(bindery.Ranges.Hours(Figures.Whole(plan.Schedule.OffSupplyHours)))),
                One(bindery, "figure-own-hours", Phrase.Of(bindery.Ranges.Hours(Figures.Whole(plan.Schedule.HouseholdHours)))),
            ]),
            .. Needed(bindery),
        ];
    }

    /// <summary>What it may cost, as a range.</summary>
    internal static Definition Cost(Bindery bindery) => One(bindery, "figure-cost", Sums(bindery));

    private static Definition One(Bindery bindery, string label, Phrase says) => new(null, Phrase.Of(bindery.Say(label)), [new Block.Prose(says)]);

    // What one and nine in ten trials do not exceed, and the middle one; without trials, the range of the plan.
    private static Phrase Sums(Bindery bindery)
    {
        var currency = bindery.Plan.Money.Currency;
        return bindery.Plan is { IsBeyond: false, Chances.Cost: { } cost }
            ? bindery.Labels.Compose("figure-chance", ("from", Sum(Figures.Down(cost.P10))), ("to", Sum(Figures.Up(cost.P90))), ("middle", Sum(Figures.Near(cost.P50))))
            : bindery.Total(bindery.Plan.Money.Gross);

        Phrase Sum(decimal sum) => Phrase.Of(Figures.Exact(sum, currency));
    }

    private static Phrase Finish(Bindery bindery)
    {
        if (bindery.Plan is { IsBeyond: false, Chances.Finish: { } finish })
        {
            var range = bindery.Dates.Range(new DateRange(finish.P10, finish.P50, finish.P90));
            return finish.P10 == finish.P90 ? range : range + bindery.Labels.Compose("figure-finish-middle", ("date", bindery.Dates.SayShort(finish.P50)));
        }

        var said = bindery.Finish(bindery.Plan.Schedule.Finish);
        return bindery.Plan.IsBeyond ? said : said + bindery.Labels.Compose("figure-finish-likely", ("date", bindery.Dates.SayShort(bindery.Plan.Schedule.Finish.Likely)));
    }

    private static IEnumerable<Block> Needed(Bindery bindery)
    {
        var schedule = bindery.Plan.Schedule;
        if (bindery.Plan.IsBeyond || schedule.NeededBy is not { } day)
        {
            return [];
        }

        var said = bindery.Labels.Compose(LabelOf(schedule.Feasibility), ("date", bindery.Dates.Say(day)));
        return [new Block.Prose(bindery.Plan is { Occasion.Edition: not EditionKind.Public, Chances.MeetsDate: { } share } ? said + Phrase.Of(" ") + Phrase.Of(Share(bindery, share)) : said)];
    }

    private static string Share(Bindery bindery, double share) => Math.Round(share * 10, MidpointRounding.AwayFromZero) switch
    {
        <= 0 => bindery.Say("meets-hardly"),
        >= 10 => bindery.Say("meets-nearly"),
        var tenths => bindery.Say("meets-tenths", ("n", Invariant($"{tenths:0}"))),
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
