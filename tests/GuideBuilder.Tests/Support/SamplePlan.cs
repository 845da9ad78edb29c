using System.Collections.Frozen;
using System.Collections.Immutable;
using GuideBuilder.Model;

namespace GuideBuilder.Tests.Support;

/// <summary>A plan made by hand over the sample guidance.</summary>
internal static class SamplePlan
{
    /// <summary>The plan for an address in the given words (null = not known) and an edition.</summary>
    public static Plan For(string? address = "14 Avebury Close", EditionKind edition = EditionKind.Householder)
    {
        var home = new Given.Answered(Sample.Address, address is null ? Standing.Unknown : Standing.Known, address is null ? null : new Value.Words(address), null);
        var cable = new Given.Answered(Sample.CableKind, Standing.Unknown, null, null);
        var answers = new AnswerSet(
            "sample.yaml", new HandbookSettings(1, "sample", edition, null, null),
            new Dictionary<string, Given.Answered>(StringComparer.Ordinal) { [home.Name] = home, [cable.Name] = cable }.ToFrozenDictionary(StringComparer.Ordinal),
            [new Paper(PaperKind.Quotation, "network-operator", Sample.Today, null, new Value.Amount(Quantity.Of(1180, "£"), VatBasis.Including), [], [], "Q-7", Place.None)],
            [new LogEvent(Sample.Today, LogKind.Applied, "ask-operator", "network-operator", null, null, null, null, "rang twice", Place.None)]);
        var derived = new Dictionary<string, Given.Derived>(StringComparer.Ordinal)
        {
            ["ground.hole-depth"] = Fact("ground.hole-depth", Quantity.Of(0.9m, "m")),
            ["ground.hole-surface"] = Fact("ground.hole-surface", Quantity.Of(1.44m, "m²")),
        };
        var way = Settled(Sample.Cabinet);
        return new(
            new Facts(answers, derived.ToFrozenDictionary(StringComparer.Ordinal)), new Occasion(Sample.Today, 7, edition), Sample.England,
            [new PlannedWay(way, new WayFigures(Three(1000, 2000, 3000), Dates(20, 60, 90), Three(2, 4, 8), Three(6, 10, 20), ["cable-strike"], ["building-notice"]))],
            way,
            [.. Sample.Parties.Select(Settled)],
            [.. Sample.Steps.Select((s, i) => new PlannedStep(Settled(s), StepDates(i)))],
            new Schedule(Sample.Today, Dates(20, 60, 90), Sample.Today.PlusDays(100), Feasibility.MetIfLikely, ["day-cutout"], [Meeting], Three(2, 4, 8), Three(6, 10, 20)),
            Costs,
            new MoneySummary(Unit.Of("£"), Three(1000, 2000, 3000), Three(160, 333, 500)),
            [new PlannedHazard(Settled(Sample.CableStrike), ["outside-cabinet"])],
            [new Planned<Consent>(Sample.Notice, ItemState.Open, Because(Sample.Notice, Truth.Open, cable))],
            [Settled(Sample.Late)],
            [new OpenQuestion(Sample.CableKind, [new ItemName("consent", "building-notice")])],
            [new Assumption(Sample.CableKind, new Value.Option("lead"))]);
    }

    private static MeetingDay Meeting { get; } = new("works-day", Sample.Today.PlusDays(58), Dates(50, 58, 80), [new MeetingTurn("day-cutout", 0, 2.5m, true), new MeetingTurn("day-board-on", 2.5m, 5, true)]);

    private static ImmutableArray<PlannedCost> Costs { get; } =
    [
        Cost(Sample.Costs[0], ItemState.Settled, 1000, true), Cost(Sample.Costs[1], ItemState.Open, 300.5m, false),
    ];

    private static Given.Derived Fact(string name, Quantity quantity) => new(name, Standing.Known, new Value.Amount(quantity), new Because("fact", name, Place.None, Truth.Holds, [], LocalText.Empty, []));

    private static PlannedCost Cost(Cost cost, ItemState state, decimal net, bool added)
    {
        var price = new Price(cost.Price, Three(net / 2, net, net * 2), Unit.Of("£"), VatBasis.Excluding, "standard", 2025, "all", null, Basis.Nothing, Place.None);
        return new(new Planned<Cost>(cost, state, Because(cost, Truth.Holds)), price, 1, price.Amount, 0.2m, price.Amount.Map(a => a * 1.2m), null, added ? Sample.Today.PlusDays(58) : null, added);
    }

    private static Planned<T> Settled<T>(T rule)
        where T : Rule => new(rule, ItemState.Settled, Because(rule, Truth.Holds));

    private static Because Because(Rule rule, Truth truth, params Given[] given) => new(
        rule.Head.Kind, rule.Id, rule.Head.Place, truth,
        [.. given.Select(g => new Leaf(new Condition.Asks(g.Name, new Comparison.IsOneOf(["lead"]), Place.None), g, truth))], rule.Head.Because, rule.Head.Basis.Sources);

    private static StepDates StepDates(int index)
    {
        var start = Sample.Today.PlusDays(index * 20);
        var range = new DateRange(start, start.PlusDays(3), start.PlusDays(9));
        return new(start, start.PlusDays(3), start.PlusDays(5), start.PlusDays(8), range, range, index, index, false, null, start.PlusDays(-5), null);
    }

    private static DateRange Dates(int early, int likely, int late) => new(Sample.Today.PlusDays(early), Sample.Today.PlusDays(likely), Sample.Today.PlusDays(late));

    private static ThreePoint Three(decimal low, decimal likely, decimal high) => ThreePoint.Of(low, likely, high)!;
}
