using GuideBuilder.Model;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Derived;

public sealed class CalculatorTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("a.ask"), Small.Amount("a.length", "m", 1) with { AskIf = Small.Is("a.ask", "yes") }, Small.Amount("a.width", "m", 1)],
    };

    [Fact]
    public void Every_calculated_fact_has_its_calculator() =>
        Assert.Equal(CalculatedFact.All.Select(f => f.Name).Order(StringComparer.Ordinal), Calculators.ByName.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("yes", 2, 3, Standing.Known)]
    [InlineData("yes", null, 3, Standing.Unknown)]
    [InlineData("yes", 2, null, Standing.Unknown)]
    [InlineData("no", null, 3, Standing.NotAsked)]
    [InlineData("no", null, null, Standing.NotAsked)]
    public void A_needed_input_passes_on_that_it_is_unknown_or_not_asked(string ask, int? length, int? width, Standing standing)
    {
        var area = new Calculator("area", ["a.length", "a.width"], [], i => new Value.Amount(Quantity.Of(i.Quantity("a.length")!.Amount * i.Quantity("a.width")!.Amount, "m²")));

        var found = area.Of(Lookup(ask, length, width), Guidance.Tables);

        Assert.Equal((standing, standing == Standing.Known ? Quantity.Of(6, "m²") : null), (found.Standing, (found.Value as Value.Amount)?.Quantity));
        Assert.Equal(standing == Standing.Unknown, found.Because.Unsettled.Any());
    }

    [Theory]
    [InlineData("no", null, Standing.Known)]
    [InlineData("yes", null, Standing.Unknown)]
    [InlineData("yes", 2, Standing.Known)]
    public void An_input_that_it_may_use_is_missed_only_when_unknown(string ask, int? length, Standing standing)
    {
        var longer = new Calculator("longer", ["a.width"], ["a.length"], i => Value.YesNo(i.Quantity("a.length") is not null));

        Assert.Equal(standing, longer.Of(Lookup(ask, length, 3), Guidance.Tables).Standing);
    }

    [Fact]
    public void Outside_its_range_a_calculator_knows_nothing() =>
        Assert.Equal(Standing.Unknown, new Calculator("never", [], [], _ => null).Of(Lookup("no", null, null), Guidance.Tables).Standing);

    private static Lookup Lookup(string ask, int? length, int? width)
    {
        var lengths = new[] { ("a.length", length), ("a.width", width) }.Where(a => a.Item2 is not null).Select(a => (a.Item1, (object)Quantity.Of(a.Item2!.Value, "m")));
        var answers = Small.Answers(Guidance, [("a.ask", ask), .. lengths]);
        return name => answers[name];
    }
}
