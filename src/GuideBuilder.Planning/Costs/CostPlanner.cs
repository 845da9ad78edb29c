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

    /// <summary>The sum of the added lines, to the penny.</summary>
    public static MoneySummary Sum(IEnumerable<PlannedCost> costs, Unit currency)
    {
        var added = costs.Where(c => c.Added).ToArray();
        return new(currency, Total(added.Select(c => c.Gross)), Total(added.Select(Vat)));
    }

    /// <summary>What the guidance lacks for these lines.</summary>
    public static IEnumerable<Fault> Faults(IEnumerable<PlannedCost> costs, Market market) =>
        costs.Where(c => c.Cost.IsPresent).SelectMany(c => Lacks(c, market));

    private static PlannedCost Line(Planned<Cost> cost, WayCase way)
    {
        var price = way.Guidance.Tables.Prices.First(p => p.Id == cost.Item.Price);
        var quantity = Quantities.Of(cost.Item, way);
        var counts = way.IsInWorld(cost.Item) || (cost.IsPresent && Quotations.Names(way.Facts.Answers, cost.Item.Id, way.Occasion.Today));
        var added = counts && quantity is not null && price.Currency == way.Market.Nation.Currency;
        return new(cost, price, quantity ?? 1, ThreePoint.Zero, 0, ThreePoint.Zero, null, null, added);
    }

    private static PlannedCost Finish(PlannedCost line, Market market, Quoted? quoted, LocalDate? due)
    {
        var sum = quoted is null ? Pricing.Of(line.Price, line.Quantity, market) : OfQuoted(quoted, Pricing.VatShare(line.Price, market));
        return line with { Net = sum.Net, VatShare = sum.VatShare, Gross = sum.Gross, Quotation = quoted?.Paper, Due = due };
    }

    private static Sum OfQuoted(Quoted quoted, decimal rate) =>
        quoted is { Carries: true, Paper.Amount: { } amount }
            ? Pricing.Split(ThreePoint.Certain(amount.Quantity.Amount), amount.Vat, rate)
            : Costs.Sum.Nothing;

    private static LocalDate? DueOn(Cost cost, FrozenDictionary<string, StepDates> dates) =>
        cost.DueAt is { } step && dates.TryGetValue(step, out var at) ? at.EarliestFinish : null;

    private static ThreePoint Vat(PlannedCost line) =>
        ThreePoint.Of(line.Gross.Low - line.Net.Low, line.Gross.Likely - line.Net.Likely, line.Gross.High - line.Net.High)!;

    private static ThreePoint Total(IEnumerable<ThreePoint> parts) => parts.Aggregate(ThreePoint.Zero, ThreePoint.Add);

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
