using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Tests.Planning.Trials;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

/// <summary>Sums of money, spreads and mixtures worked out elsewhere; beside each where its figures stand. What splits a price or brings it to another year stands in the price tests.</summary>
public sealed class CostChecks
{
    // The home example: operator, electrician, supplier, cabinet and duct, dig and reinstate, making good. Our own values; means and deviations derived by the closed forms.
    private static readonly (double Low, double Likely, double High)[] Home =
        [(600, 1100, 2000), (110, 220, 450), (0, 60, 200), (65, 110, 220), (0, 300, 900), (0, 120, 400)];

    /// <summary>A home-builder's account of £2,600 + 5 % (read), and the same at 20 % (derived); an operator's £1,000 in Ireland at 13.5 % and 23 % (rule read, sums derived).</summary>
    [Theory]
    [InlineData(2600, 0.05, 2730)]
    [InlineData(2600, 0.20, 3120)]
    [InlineData(1000, 0.135, 1135)]
    [InlineData(1000, 0.23, 1230)]
    public void Other_rates_of_vat_give_their_sums(decimal net, decimal rate, decimal gross) =>
        Assert.Equal(gross, Pricing.Split(ThreePoint.Certain(net), VatBasis.Excluding, rate).Gross.Likely);

    /// <summary>A mixed bill (derived): an operator's £600 without VAT, an electrician who is not registered for VAT, £180, a cabinet at £75 with VAT, and a fee outside VAT.</summary>
    [Fact]
    public void A_mixed_bill_adds_up_with_the_vat_that_is_in_it()
    {
        Sum[] bill =
        [
            Pricing.Split(ThreePoint.Certain(600), VatBasis.Excluding, 0.2m),
            Pricing.Split(ThreePoint.Certain(180), VatBasis.Outside, 0.2m),
            Pricing.Split(ThreePoint.Certain(75), VatBasis.Including, 0.2m),
            Pricing.Split(ThreePoint.Certain(0), VatBasis.Outside, 0.2m),
        ];

        Assert.Equal((975, 132.50m), (bill.Sum(b => b.Gross.Likely), bill.Sum(b => b.Gross.Likely - b.Net.Likely)));
    }

    /// <summary>PERT 600, 1,100, 2,000 and 10, 20, 60: mean (a + 4 m + b) / 6 (read: the usual construction), exact variance (mean − a)(b − mean) / 7 (memory).</summary>
    [Theory]
    [InlineData(600, 1100, 2000, 1166.67, 259.73)]
    [InlineData(10, 20, 60, 25, 8.66)]
    public void A_three_point_value_has_its_mean_and_deviation(double low, double likely, double high, double mean, double deviation)
    {
        var draws = Drawn((low, likely, high), "one", 200_000);
        var (found, variance) = Spread(draws);

        Assert.Equal(mean, found, 4 * deviation / Math.Sqrt(draws.Length));
        Assert.Equal(deviation, Math.Sqrt(variance), 0.02 * deviation);
    }

    /// <summary>The home example added up: mean £2,097.50, deviation £326.02, P10 1,680, P50 2,086, P80 2,379, P90 2,531 (derived by convolution on a one-pound grid, ± 2).</summary>
    [Fact]
    public void The_home_example_has_its_mean_deviation_and_quantiles()
    {
        const int Trials = 200_000;
        var items = Home.Select((h, i) => Drawn(h, $"item-{i}", Trials)).ToArray();
        var sums = Enumerable.Range(0, Trials).Select(t => items.Sum(i => i[t])).ToArray();
        var (mean, variance) = Spread(sums);
        var q = Quantiles.OfEqual(sums);

        Assert.Equal(2097.5, mean, 4 * 326.02 / Math.Sqrt(Trials));
        Assert.Equal(326.02, Math.Sqrt(variance), 3.5);
        Assert.All([(1680, q.P10), (2086, q.P50), (2379, q.P80), (2531, q.P90)], p => Assert.Equal(p.Item1, p.Item2, 8.0));
        Assert.Equal(0.299, sums.Count(s => s <= 1910) / (double)Trials, 0.01);
    }

    /// <summary>The home example with common draws: deviation 437.89 for a correlation of 0.3 and 625.42 for 1 (derived: (1 − ρ) Σσ² + ρ (Σσ)²). Rank correlation of unlike shapes comes a little below it.</summary>
    [Theory]
    [InlineData(0.0, 326.02)]
    [InlineData(0.3, 437.89)]
    [InlineData(1.0, 625.42)]
    public void Items_that_are_dear_together_spread_their_sum(double correlation, double deviation)
    {
        const int Trials = 200_000;
        var group = Draws.Of(1, "kind", "market", Trials);
        var items = Home.Select((h, i) => Drawn(h, Draws.Shared(Draws.Of(1, $"item-{i}", "cost", Trials), Draws.Of(1, $"item-{i}", "together", Trials), group, correlation))).ToArray();
        var (mean, variance) = Spread([.. Enumerable.Range(0, Trials).Select(t => items.Sum(i => i[t]))]);

        Assert.Equal(2097.50, mean, 4 * deviation / Math.Sqrt(Trials));
        Assert.Equal(deviation, Math.Sqrt(variance), 0.02 * deviation);
    }

    /// <summary>An event with chance 0.10 of 150 ± 50: mean 15, deviation 47.70 (derived: p (s² + k²) − (p k)²).</summary>
    [Fact]
    public void A_chance_event_has_its_mean_and_deviation()
    {
        const int Trials = 200_000;
        var (happens, side) = (Draws.Of(1, "risk", "event", Trials), Draws.Of(1, "risk", "side", Trials));
        var (mean, variance) = Spread([.. happens.Zip(side, (h, s) => Draws.Happens(h, 0.1) ? Draws.Happens(s, 0.5) ? 100.0 : 200.0 : 0)]);

        Assert.Equal(15, mean, 4 * 47.7 / Math.Sqrt(Trials));
        Assert.Equal(47.70, Math.Sqrt(variance), 0.5);
    }

    /// <summary>Pharma Manufacturing, Estimating risk-based cost and contingency, 2012: an item of 70 to 85 that is certain and one of 10 to 15 with chance 0.8 (read); taken as uniform, mean 87.5, deviation 6.739 (derived).</summary>
    [Fact]
    public void A_certain_item_and_a_chance_item_have_their_mean_and_deviation()
    {
        const int Trials = 200_000;
        double At(uint draw) => draw / (double)(1UL << 32);
        var (a, b, comes) = (Draws.Of(1, "a", "cost", Trials), Draws.Of(1, "b", "cost", Trials), Draws.Of(1, "b", "event", Trials));
        var (mean, variance) = Spread([.. Enumerable.Range(0, Trials).Select(t => 70 + (15 * At(a[t])) + (Draws.Happens(comes[t], 0.8) ? 10 + (5 * At(b[t])) : 0))]);

        Assert.Equal(87.5, mean, 4 * 6.739 / Math.Sqrt(Trials));
        Assert.Equal(6.739, Math.Sqrt(variance), 0.07);
    }

    /// <summary>The two-thirds rule of Ireland (rule read: written answer, Houses of the Oireachtas, 2018; sums derived): of €1,000 before VAT, goods of €700 take the whole to 23 %, goods of €600 leave it at 13.5 %.</summary>
    [Theory]
    [InlineData("€1,000 ex VAT", "€700", 1230)]
    [InlineData("€1,000 ex VAT", "€600", 1135)]
    [InlineData("€1,135 inc VAT", "€660", 1135)]
    [InlineData("€1,000 ex VAT", null, 1135)]
    public void Goods_over_two_thirds_of_an_Irish_price_of_work_take_the_higher_rate(string amount, string? goods, decimal gross)
    {
        var said = goods is null ? "" : $", goods: \"{goods}\"";
        var plan = Support.Home.Given("home: {nation: ireland, kind: semi, built: 1954}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n"
            + $"papers: [{{kind: quotation, from: electrician, dated: 2026-11-20, amount: \"{amount}\"{said}}}]\n").Plan;

        Assert.Equal(gross, plan.Costs.Where(c => c is { Added: true, Quotation: not null }).Sum(c => c.Gross.Likely));
    }

    /// <summary>Optimism bias, a Treasury-commissioned review of 2002, worked example: 30 % at 51 and 70 % at 24 give 32.1; 30 % at 39 and 70 % at 4 give 14.5 (read). As worlds by their shares.</summary>
    [Theory]
    [InlineData(51, 24, 32.1)]
    [InlineData(39, 4, 14.5)]
    public void A_mixture_of_two_worlds_has_the_weighted_mean(double one, double other, double mean)
    {
        var question = Small.YesNo("a.standard") with { Options = [new("yes", Small.Words("yes"), 3, true, Place.None), new("no", Small.Words("no"), 7, false, Place.None)] };
        Price Certain(string id, double pounds) => Small.Price(id, (decimal)pounds, (decimal)pounds, (decimal)pounds, VatBasis.Outside);
        var guidance = Small.Empty with
        {
            Questions = [.. Small.Empty.Questions, question],
            Costs = [Small.Cost("one", price: "one", when: Small.Is("a.standard", "yes")), Small.Cost("other", price: "other", when: Small.Is("a.standard", "no"))],
            Tables = Small.Empty.Tables with { Prices = [Certain("one", one), Certain("other", other)], Vat = [Small.Vat("standard", 0.2m)] },
        };
        var run = Runs.Of(guidance, Small.Answers(guidance), 400);

        Assert.Equal(mean, Runs.Spread(run.Sums.Select(s => s / 100.0), run.Worlds.Weights).Mean, 9);
    }

    private static double[] Drawn((double Low, double Likely, double High) points, string item, int trials) => Drawn(points, Draws.Of(1, item, "cost", trials));

    private static double[] Drawn((double Low, double Likely, double High) points, uint[] draws)
    {
        var amount = ThreePoint.Of((decimal)points.Low, (decimal)points.Likely, (decimal)points.High)!;
        var table = SamplingTable.Amount(amount);
        return [.. draws.Select(d => (double)SamplingTable.ValueAt(amount, table.Step(d)))];
    }

    private static (double Mean, double Variance) Spread(double[] values)
    {
        var mean = values.Average();
        return (mean, values.Average(v => (v - mean) * (v - mean)));
    }
}
