using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Costs;

public sealed class CostTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("a.deep"), Small.Amount("a.length", "m", 8, 3), Small.Choice("home.region", "london", "north")],
        Steps = [Small.Step("pay", 2, "household")],
        Costs = [Small.Cost("alteration", due: "pay"), Small.Cost("trench", quantity: "a.length", price: "metre"), Small.Cost("shoring", when: Small.Is("a.deep", "no"))],
        Tables = Small.Empty.Tables with
        {
            Prices = [Small.Price("price", 600, 1100, 2000), Small.Price("metre", 10.01m, 12.34m, 15.55m, VatBasis.Including)],
            Vat = [Small.Vat("standard", 0.2m)],
        },
    };

    [Fact]
    public void A_line_excluding_vat_has_it_added()
    {
        var line = Line(Plan(), "alteration");

        Assert.Equal((ThreePoint.Of(600, 1100, 2000), ThreePoint.Of(720, 1320, 2400), 0.2m), (line.Net, line.Gross, line.VatShare));
    }

    [Fact]
    public void A_line_including_vat_is_multiplied_then_split_to_the_penny()
    {
        var line = Line(Plan(("a.length", Quantity.Of(3, "m"))), "trench");

        Assert.Equal((ThreePoint.Of(30.03m, 37.02m, 46.65m), ThreePoint.Of(25.03m, 30.85m, 38.88m)), (line.Gross, line.Net));
    }

    [Fact]
    public void A_quantity_is_counted_in_the_unit_of_its_question() => Assert.Equal(2, Line(Plan(("a.length", Quantity.Of(200, "cm"))), "trench").Quantity);

    [Fact]
    public void An_unknown_quantity_takes_what_the_assumed_world_takes_and_is_an_open_question()
    {
        var plan = Plan();

        Assert.Equal(8, Line(plan, "trench").Quantity);
        Assert.Contains(plan.OpenQuestions, q => q.Question.Name == "a.length" && q.WouldSettle.Contains(new("cost", "trench")));
    }

    [Fact]
    public void An_open_line_outside_the_assumed_world_is_listed_and_not_added()
    {
        var plan = Plan();

        Assert.Equal((ItemState.Open, false), (Line(plan, "shoring").Cost.State, Line(plan, "shoring").Added));
        Assert.Equal(1320 + 98.72m, plan.Money.Base);
        Assert.Equal(220 + 16.45m, plan.Money.BaseVat);
    }

    [Fact]
    public void A_line_falls_due_when_its_step_is_finished()
    {
        Assert.Equal(new LocalDate(2027, 2, 2), Line(Plan(), "alteration").Due);
        Assert.Null(Line(Plan(), "trench").Due);
    }

    [Fact]
    public void Outside_vat_nothing_is_added_or_split()
    {
        var line = Line(Small.Plan(WithPrice(Small.Price("price", 1, 2, 3, VatBasis.Outside))), "alteration");

        Assert.Equal((line.Net, 0m), (line.Gross, line.VatShare));
    }

    [Fact]
    public void Where_nobody_says_the_worst_case_adds_vat()
    {
        var line = Line(Small.Plan(WithPrice(Small.Price("price", 100, 100, 100, VatBasis.NotStated))), "alteration");

        Assert.Equal(ThreePoint.Of(100, 100, 120), line.Gross);
        Assert.Equal(ThreePoint.Of(83.33m, 83.33m, 100), line.Net);
    }

    [Theory]
    [InlineData("london", 1300)]
    [InlineData("north", 1000)]
    public void A_regional_price_takes_its_factor(string region, decimal net)
    {
        var guidance = WithPrice(Small.Price("price", 1000, 1000, 1000) with { RegionFactor = "labour" });
        var factors = new RegionFactor("labour", new Dictionary<string, decimal> { ["london"] = 1.3m }.ToFrozenDictionary(), Basis.Nothing, Place.None);

        Assert.Equal(net, Line(Small.Plan(guidance with { Tables = guidance.Tables with { Regions = [factors] } }, ("home.region", region)), "alteration").Net.Likely);
    }

    [Fact]
    public void A_price_older_than_its_index_is_a_fault()
    {
        var guidance = WithPrice(Small.Price("price", 1, 2, 3) with { Index = "cpi", Year = 1999 });
        guidance = guidance with { Tables = guidance.Tables with { Indexes = [new("cpi", Small.Words("cpi"), new Dictionary<int, decimal> { [2025] = 100 }.ToFrozenDictionary(), Basis.Nothing, Place.None)] } };

        Assert.Contains("HB2008", Small.Staged(guidance, Small.Answers(guidance)).Faults.Select(f => f.Code));
    }

    [Fact]
    public void A_price_in_other_money_is_left_out_with_a_warning()
    {
        var guidance = WithPrice(Small.Price("price", 1, 2, 3) with { Currency = Unit.Of("€") });
        var staged = Small.Staged(guidance, Small.Answers(guidance));

        Assert.Equal(["HB2009", "HB2009"], staged.Faults.Select(f => f.Code));
        Assert.False(Line(staged.Value!, "alteration").Added);
    }

    private static Guidance WithPrice(Price price) => Guidance with { Tables = Guidance.Tables with { Prices = [price, Guidance.Tables.Prices[1]] } };

    private static Plan Plan(params (string, object)[] given) => Small.Plan(Guidance, given);

    private static PlannedCost Line(Plan plan, string cost) => plan.Costs.Single(c => c.Cost.Item.Id == cost);
}
