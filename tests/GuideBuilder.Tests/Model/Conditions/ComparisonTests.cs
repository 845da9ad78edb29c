using GuideBuilder.Model;

namespace GuideBuilder.Tests.Model.Conditions;

public sealed class ComparisonTests
{
    [Theory]
    [InlineData("wet", true, "wet")]
    [InlineData("wet", true, "smoke", "wet")]
    [InlineData("wet", false, "smoke")]
    [InlineData("wet", false)]
    [InlineData("none", true)]
    [InlineData("none", false, "wet")]
    public void Of_several_one_among_the_answers_is_enough_and_none_means_no_answer(string asked, bool holds, params string[] answers) =>
        Assert.Equal(Kleene.Of(holds), new Comparison.IsOneOf([asked]).Of(new Value.Several([.. answers])));

    [Theory]
    [InlineData(2, true, 5, true, 2, true)]
    [InlineData(2, true, 5, true, 5, true)]
    [InlineData(2, false, 5, true, 2, false)]
    [InlineData(2, true, 5, false, 5, false)]
    [InlineData(2, true, 5, true, 6, false)]
    [InlineData(2, true, 5, true, 1, false)]
    public void An_end_counts_unless_it_is_open(int from, bool fromCounts, int to, bool toCounts, int value, bool holds) =>
        Assert.Equal(
            Kleene.Of(holds),
            new Comparison.Within(new(Quantity.Of(from, "m"), null, fromCounts), new(Quantity.Of(to, "m"), null, toCounts)).Of(new Value.Amount(Quantity.Of(value * 1000, "mm"))));

    [Theory]
    [InlineData(1, 2, 3, Truth.Fails)]
    [InlineData(3, 4, 3, Truth.Open)]
    [InlineData(2, 3, 3, Truth.Fails)]
    [InlineData(4, 5, 3, Truth.Holds)]
    [InlineData(2, 5, 3, Truth.Open)]
    public void A_spread_is_open_unless_it_comes_out_the_same_from_end_to_end(int lowest, int highest, int over, Truth truth) =>
        Assert.Equal(truth, new Comparison.Within(new(Quantity.Number(over), null, false), null).Of(new Value.Spread(Quantity.Number(lowest), Quantity.Number(highest))));

    [Fact]
    public void A_spread_around_a_whole_range_is_open() =>
        Assert.Equal(Truth.Open, new Comparison.Within(new(Quantity.Number(3), null, true), new(Quantity.Number(4), null, true)).Of(new Value.Spread(Quantity.Number(1), Quantity.Number(9))));
}
