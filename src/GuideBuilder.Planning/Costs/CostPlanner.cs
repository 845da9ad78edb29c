using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Costs;

/// <summary>The lines of money of one way.</summary>
internal static class CostPlanner
{
    /// <summary>Every cost with its sum. Added are the lines of the assumed world whose number is known there, and those that a quotation names; the others may apply, and show what one would cost.</summary>
    public static ImmutableArray<PlannedCost> Plan(WayCase way, FrozenDictionary<string, StepDates> dates)
    {
        var planned = Items.Plan(way.Guidance.Costs, way.Lookup).Select(c => Line(c, way)).ToArray();
        var added = planned.Where(l => l.Added).Select(l => l.Cost.Item).ToArray();
        var quoted = Quotations.Of(added, way.Facts.Answers, way.Guidance.Steps, way.Occasion.Today);
        return [.. planned.Select(l => Finish(l, way.Market, quoted.GetValueOrDefault(l.Cost.Item.Id), DueOn(l.Cost.Item, dates)))];
    }

    /// <summary>The range of the trials, and the likely sum of the added lines, to the penny.</summary>
    public static MoneySummary Sum(IEnumerable<PlannedCost> costs, Unit currency, TrialRun trials)
    {
        var added = costs.Where(c => c.Added).ToArray();
        return new(
            currency,
            TrialRun.Range(trials.Gross),
            TrialRun.Range(trials.Vat))
        {
            Base = added.Sum(c => c.Gross.Likely),
            BaseVat = added.Sum(c => c.Gross.Likely - c.Net.Likely),
        };
    }

    /// <summary>The price that a line takes.</summary>
    public static Price PriceOf(Cost cost, Guidance guidance) => guidance.Tables.Prices.First(p => p.Id == cost.Price);

    /// <summary>Whether a line is priced in the nation's money, so that it can be added.</summary>
    public static bool IsInOurMoney(Cost cost, WayCase way) => PriceOf(cost, way.Guidance).Currency == way.Nation.Currency;

    /// <summary>Whether a line counts in any world: one of which nobody knows who pays it does not, until it is settled or a quotation names it.</summary>
    public static bool Counts(Planned<Cost> cost, WayCase way) => !(cost is { State: ItemState.Open, Item.NilWhileOpen: true }) || IsNamed(cost, way);

    /// <summary>A line's sum: its estimate, or what a quotation puts in its place.</summary>
    public static Sum SumOf(Price price, decimal quantity, Quoted? quoted, Market market) =>
        quoted is null ? Pricing.Of(price, quantity, market) : OfQuoted(quoted, Pricing.VatShare(price, market, quoted.Paper));

    /// <summary>What the guidance lacks for these lines.</summary>
    public static IEnumerable<Fault> Faults(IEnumerable<PlannedCost> costs, Market market) =>
        costs.Where(c => c.Cost.IsPresent).SelectMany(c => Lacks(c, market));

    private static PlannedCost Line(Planned<Cost> cost, WayCase way)
    {
        var price = PriceOf(cost.Item, way.Guidance);
        var quantity = Quantities.Of(cost.Item, name => way.InWorld(name).Value, way.Guidance);
        var added = Counts(cost, way) && (way.IsInWorld(cost.Item) || IsNamed(cost, way)) && !way.Guidance.ChanceCosts.Contains(cost.Item.Id) && quantity is not null && IsInOurMoney(cost.Item, way);
        return new(cost, price, quantity ?? 1, ThreePoint.Zero, 0, ThreePoint.Zero, null, null, added) { CountedIn = cost.Item.Quantity is { } name ? Quantities.UnitOf(name, way.Guidance) : null };
    }

    private static bool IsNamed(Planned<Cost> cost, WayCase way) => cost.IsPresent && Quotations.Names(way.Facts.Answers, cost.Item.Id, way.Occasion.Today);

    private static PlannedCost Finish(PlannedCost line, Market market, Quoted? quoted, LocalDate? due)
    {
        var sum = SumOf(line.Price, line.Quantity, quoted, market);
        return line with { Net = sum.Net, VatShare = sum.VatShare, Gross = sum.Gross, Quotation = quoted?.Paper, Due = due };
    }

    private static Sum OfQuoted(Quoted quoted, decimal rate) =>
        quoted is { Carries: true, Paper.Amount: { } amount }
            ? Pricing.Split(ThreePoint.Certain(amount.Quantity.Amount), amount.Vat, rate)
            : Costs.Sum.Nothing;

    private static LocalDate? DueOn(Cost cost, FrozenDictionary<string, StepDates> dates) =>
        cost.DueAt is { } step && dates.TryGetValue(step, out var at) ? at.EarliestFinish : null;

    private static IEnumerable<Fault> Lacks(PlannedCost line, Market market)
    {
        if (line.Price.Currency != market.Nation.Currency)
        {
            yield return PlanningFaults.OtherMoney(line.Cost.Item.Id, market.Nation.Currency.Symbol, line.Cost.Item.Head.Place);
        }

        if (Pricing.FromItsYear(line.Price, market.Tables) is null)
        {
            yield return PlanningFaults.NoIndexValue(line.Price.Id, line.Price.Index, line.Price.Year, line.Price.Place);
        }
    }
}
