using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Tests.Published;

/// <summary>Beta-PERT and triangular values. Means and variances are closed forms; the quantiles were computed with MathNet.Numerics 5.0.0, and here again by adding up the density.</summary>
public sealed class DistributionValues
{
    [Theory]
    [InlineData(2, 5, 8, 5, 1.285714, 3.4798, 5.0000, 6.0404, 6.5202)]
    [InlineData(1, 2, 9, 3, 1.714286, 1.4785, 2.7690, 4.1028, 4.8712)]
    [InlineData(0.25, 0.5, 3.75, 1, 0.294643, 0.3941, 0.8857, 1.4438, 1.7792)]
    [InlineData(5, 7, 12, 7.5, 1.607143, 5.9044, 7.3826, 8.6259, 9.2727)]
    [InlineData(10, 10, 20, 11.6667, 1.984127, 10.2085, 11.2945, 12.7522, 13.6904)]
    [InlineData(5, 20, 20, 17.5, 4.464286, 14.4644, 18.0583, 19.3453, 19.6872)]
    public void The_table_of_an_amount_has_the_mean_the_variance_and_the_quantiles_of_the_distribution(
        double low, double likely, double high, double mean, double variance, double p10, double p50, double p80, double p90)
    {
        var amount = ThreePoint.Of((decimal)low, (decimal)likely, (decimal)high)!;
        var table = SamplingTable.Amount(amount);
        var values = Spread(table).Select(step => (double)SamplingTable.ValueAt(amount, step)).ToArray();
        var grain = (high - low) / 200;

        Assert.Equal(mean, low + (table.Mean * grain), 4);
        Assert.Equal(mean, values.Average(), 0.001 * (high - low));
        Assert.Equal(variance, values.Average(v => (v - mean) * (v - mean)), 0.01 * variance);
        var quantiles = Quantiles.OfEqual(values);
        Assert.All([(p10, quantiles.P10), (p50, quantiles.P50), (p80, quantiles.P80), (p90, quantiles.P90)], q => Assert.Equal(q.Item1, q.Item2, grain));
    }

    [Theory]
    [InlineData(2, 5, 8, 3.4798, 5.0000, 6.0404, 6.5202)]
    [InlineData(1, 2, 9, 1.4785, 2.7690, 4.1028, 4.8712)]
    [InlineData(5, 7, 12, 5.9044, 7.3826, 8.6259, 9.2727)]
    public void The_quantiles_agree_with_adding_up_the_density(double low, double likely, double high, double p10, double p50, double p80, double p90)
    {
        var (alpha, beta) = (1 + (4 * (likely - low) / (high - low)), 1 + (4 * (high - likely) / (high - low)));
        const int Slices = 200_000;
        var density = Enumerable.Range(0, Slices).Select(i => (i + 0.5) / Slices).Select(x => Math.Pow(x, alpha - 1) * Math.Pow(1 - x, beta - 1)).ToArray();
        var total = density.Sum();
        double At(double share)
        {
            var (sum, i) = (0.0, 0);
            while (sum < share * total)
            {
                sum += density[i++];
            }

            return low + ((high - low) * i / Slices);
        }

        Assert.Equal([p10, p50, p80, p90], new[] { 0.1, 0.5, 0.8, 0.9 }.Select(At), (a, b) => Math.Abs(a - b) < 0.0002);
    }

    /// <summary>Whole shapes as sums of binomial terms: (0, 0, 1) is 1 − (1 − x)⁵, and in the middle α = β = 3.</summary>
    [Theory]
    [InlineData(0, 0.3)]
    [InlineData(0, 0.85)]
    [InlineData(0.5, 0.2)]
    [InlineData(0.5, 0.65)]
    public void Whole_shapes_agree_with_their_closed_form(double mode, double x)
    {
        static double Form(double mode, double x) => mode == 0 ? 1 - Math.Pow(1 - x, 5) : (10 * Math.Pow(x, 3)) - (15 * Math.Pow(x, 4)) + (6 * Math.Pow(x, 5));
        const int Steps = 200;
        var j = (int)Math.Round(x * Steps);
        const int Slices = 1000;
        var average = Enumerable.Range(0, Slices).Average(i => Form(mode, (j + ((i + 0.5) / Slices)) / Steps));

        Assert.Equal(average, new Pert(mode).Cumulative(Steps)[j], 7);
    }

    /// <summary>Triangular closed forms, as the reference against which the tails of the other distribution are lighter: mean, variance, P50, P90.</summary>
    [Theory]
    [InlineData(1, 2, 9, 4, 3.166667, 3.7085, 6.6336)]
    [InlineData(5, 7, 12, 8, 2.166667, 7.8167, 10.1292)]
    public void The_triangle_has_its_known_values_and_heavier_tails(double a, double m, double b, double mean, double variance, double p50, double p90)
    {
        double At(double u) => u <= (m - a) / (b - a) ? a + Math.Sqrt(u * (b - a) * (m - a)) : b - Math.Sqrt((1 - u) * (b - a) * (b - m));
        var amount = ThreePoint.Of((decimal)a, (decimal)m, (decimal)b)!;
        var pert = Quantiles.OfEqual(Spread(SamplingTable.Amount(amount)).Select(s => SamplingTable.ValueAt(amount, s)).ToArray());

        Assert.Equal((mean, variance), ((a + m + b) / 3, Math.Round(((a * a) + (m * m) + (b * b) - (a * m) - (a * b) - (m * b)) / 18, 6)));
        Assert.Equal((p50, p90), (Math.Round(At(0.5), 4), Math.Round(At(0.9), 4)));
        Assert.True((double)pert.P90 < p90);
    }

    private static IEnumerable<int> Spread(SamplingTable table) => Enumerable.Range(0, 20_000).Select(i => table.Step((uint)((i + 0.5) / 20_000 * (1UL << 32))));
}
