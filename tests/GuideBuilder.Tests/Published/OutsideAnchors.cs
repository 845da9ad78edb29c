using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>Published prices of a domestic service alteration against our own range of the operator's part for such a home, in the money of the newest year of the index.</summary>
public sealed class OutsideAnchors
{
    /// <summary>
    /// Northern Powergrid, Connections, guide price to move a supply: £600 without VAT, £720 with it (read; undated, taken as 2022, the middle of 2021 to 2023).
    /// Electricity North West, Indicative costs, domestic service alteration: from £880, average £1,200 with VAT (read; undated, taken as 2021).
    /// </summary>
    [Theory]
    [InlineData(720, 2022)]
    [InlineData(880, 2021)]
    [InlineData(1200, 2021)]
    public void A_published_price_lies_inside_our_range_of_the_operators_part(decimal published, int year)
    {
        var index = Content.Guidance.Tables.Indexes.First(i => i.Id == "consumer-prices").ByYear;
        var now = published * index[index.Keys.Max()] / index[year];
        var range = OperatorsPart();

        Assert.InRange(now, range[500], range[9500]);
    }

    // The operator's lines that a home with one joint on its own land pays, its own side digging: sorted sums of 10,000 draws.
    private static decimal[] OperatorsPart()
    {
        var plan = Home.At("answers/avebury-close.yaml").Plan;
        var market = new Market(plan.Nation, "east-and-midlands", Content.Guidance.Tables);
        var sums = new decimal[10_000];
        foreach (var line in plan.Costs.Where(c => c is { Added: true, Cost.State: ItemState.Settled } && c.Cost.Item.InvoicedBy == "network-operator"))
        {
            var gross = Pricing.Of(line.Price, line.Quantity, market).Gross;
            var (table, draws) = (SamplingTable.Amount(gross), Draws.Of(1, line.Cost.Item.Id, "cost", sums.Length));
            for (var i = 0; i < sums.Length; i++)
            {
                sums[i] += table.Steps == 0 ? gross.Low : SamplingTable.ValueAt(gross, table.Step(draws[i]));
            }
        }

        Array.Sort(sums);
        Assert.True(sums[0] > 0);
        return sums;
    }
}
