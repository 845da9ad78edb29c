using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Costs;

/// <summary>Holds each quotation against our own range for the lines that it stands for.</summary>
internal static class QuotationChecks
{
    private const int Trials = 10_000;

    /// <summary>A check for each quotation that stands for a line of the base plan, in the order of its lines.</summary>
    public static ImmutableArray<QuotationCheck> Of(WayPlan plan) =>
    [
        .. plan.Costs.Where(c => c is { Added: true, Quotation.Amount: not null }).GroupBy(c => c.Quotation!).Select(g => Check(g.Key, [.. g], plan.Case)),
    ];

    private static QuotationCheck Check(Paper paper, ImmutableArray<PlannedCost> lines, WayCase way)
    {
        var sums = new decimal[Trials];
        foreach (var line in lines)
        {
            var gross = Pricing.Of(line.Price, line.Quantity, way.Market).Gross;
            var table = SamplingTable.Amount(gross);
            var draws = Draws.Of(way.Occasion.Seed, line.Cost.Item.Id, "cost", Trials);
            for (var i = 0; i < Trials; i++)
            {
                sums[i] += table.Steps == 0 ? gross.Low : SamplingTable.ValueAt(gross, table.Step(draws[i]));
            }
        }

        var range = Quantiles.OfEqual(sums);
        return new(paper, [.. lines.Select(l => l.Cost.Item.Id)], lines.Sum(l => l.Gross.Likely), ThreePoint.Of(range.P10, range.P50, range.P90)!);
    }
}
