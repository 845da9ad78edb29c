using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Tests.Planning.Chance;

public sealed class QuantilesTests
{
    [Fact]
    public void A_quantile_is_the_smallest_value_that_its_share_does_not_exceed()
    {
        Assert.Equal(new(1, 1, 5, 8, 9, 10), Quantiles.OfEqual(Enumerable.Range(1, 10).Reverse().ToArray()));
        Assert.Equal(new(7, 7, 7, 7, 7, 7), Quantiles.OfEqual([7]));
    }

    [Fact]
    public void Weights_count_as_repeats() =>
        Assert.Equal(
            Quantiles.OfEqual([1, 1, 1, 2, 3, 3, 3, 3, 3, 9]),
            Quantiles.Of([(9, 1.0), (3, 5.0), (1, 3.0), (2, 1.0), (100, 0.0)]));

    [Fact]
    public void A_mixture_lies_between_its_parts()
    {
        int[] quick = [1, 2, 2, 3, 4], slow = [3, 5, 8, 9, 12];
        var mixed = Quantiles.Of(quick.Select(q => (q, 0.3)).Concat(slow.Select(s => (s, 0.7))));

        Assert.InRange(mixed.P50, Quantiles.OfEqual(quick).P50, Quantiles.OfEqual(slow).P50);
        Assert.InRange(mixed.P90, Quantiles.OfEqual(quick).P90, Quantiles.OfEqual(slow).P90);
    }

    [Fact]
    public void The_share_up_to_a_limit_counts_the_limit() => Assert.Equal(0.75, Quantiles.ShareUpTo([1, 2, 3, 4], 3));

    /// <summary>Ranks that bracket the ninth tenth of 10,000 with about 95 in 100: the binomial count below it lies between them.</summary>
    [Fact]
    public void The_ranks_around_the_ninth_tenth_of_ten_thousand_are_the_known_ones()
    {
        var spread = 1.96 * Math.Sqrt(10_000 * 0.9 * 0.1);

        Assert.Equal((8941, 9059), ((int)Math.Floor(9000 - spread), (int)Math.Ceiling(9000 + spread)));
    }
}
