using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Tests.Planning.Chance;

public sealed class SamplingTableTests
{
    private static readonly Gen<(int Low, int Likely, int High)> ThreeDays = Gen.Select(Gen.Int[0, 40], Gen.Int[0, 30], Gen.Int[0, 60], (a, b, c) => (a, a + b, a + b + c));

    [Fact]
    public void The_mean_of_many_drawn_days_is_the_mean_of_the_distribution()
    {
        const int Trials = 100_000;
        var table = SamplingTable.Days(1, 2, 9);
        var days = Draws.Of(1, "a", "days", Trials).Select(d => 1 + table.Step(d)).ToArray();

        // A day's rounding adds at most a quarter to the variance of 12/7.
        Assert.Equal(3, days.Average(), 4 * Math.Sqrt((12.0 / 7) + 0.25) / Math.Sqrt(Trials));
        Assert.Equal((1, 9), (days.Min(), days.Max()));
    }

    [Fact]
    public void The_mean_of_whole_days_is_exact_for_any_three_points() =>
        ThreeDays.Sample(t => Math.Abs(SamplingTable.Days(t.Low, t.Likely, t.High).Mean + t.Low - ((t.Low + (4.0 * t.Likely) + t.High) / 6)) < 1e-6);

    [Fact]
    public void Moving_all_three_points_moves_every_draw_by_as_much() =>
        Gen.Select(ThreeDays, Gen.UInt, Gen.Int[0, 50]).Sample((t, draw, by) =>
            SamplingTable.Days(t.Low, t.Likely, t.High).Step(draw) == SamplingTable.Days(t.Low + by, t.Likely + by, t.High + by).Step(draw));

    [Fact]
    public void Raising_a_high_value_lowers_neither_the_mean_nor_the_highest_amount() =>
        Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Int[1, 3000], Gen.Int[1, 50]).Sample((low, likely, high, more) =>
        {
            var (before, after) = (ThreePoint.Of(low, low + likely, low + likely + high)!, ThreePoint.Of(low, low + likely, low + likely + high + more)!);
            return Mean(before) < Mean(after) && Highest(before) < Highest(after);
        });

    [Fact]
    public void What_is_certain_draws_nothing()
    {
        Assert.Equal(0, SamplingTable.Days(4, 4, 4).Step(uint.MaxValue));
        Assert.Equal(0, SamplingTable.Amount(ThreePoint.Certain(99)).Step(uint.MaxValue));
    }

    [Fact]
    public void Every_day_from_low_to_high_can_be_drawn_and_none_outside() =>
        ThreeDays.Sample(t =>
        {
            var table = SamplingTable.Days(t.Low, t.Likely, t.High);
            return table.Step(0) == 0 && table.Step(uint.MaxValue) <= t.High - t.Low && table.Steps == t.High - t.Low;
        });

    private static double Mean(ThreePoint amount) => (double)amount.Low + (SamplingTable.Amount(amount).Mean * (double)(amount.High - amount.Low) / 200);

    private static decimal Highest(ThreePoint amount) => SamplingTable.ValueAt(amount, SamplingTable.Amount(amount).Steps);
}
