using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Costs;

public sealed class CashFlowTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Steps =
        [
            Small.Step("accept", 2, "household"),
            Small.Step("buy", 1, "household", ["accept"]),
            Small.Turn("joint", "operator", 1) with { After = [Small.After("buy", 7)] },
            Small.Step("tidy", 1, after: ["joint"]),
        ],
        Costs =
        [
            Small.Cost("making-good", "electrician", due: "tidy"),
            Small.Cost("alteration", price: "dear", due: "accept") with { PaidAheadOf = "works-day" },
            Small.Cost("cabinet", "household", due: "buy"),
            Small.Cost("undated"),
        ],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 50, 100, 200, VatBasis.Including), Small.Price("dear", 600, 1100, 2000)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    /// <summary>£1,320 paid in advance, with VAT, and nothing begun: all of it may come back (our own refund case, derived).</summary>
    [Fact]
    public void What_is_paid_ahead_may_come_back_until_the_works_day() => Assert.Equal(
        [
            ("alteration", new(2027, 2, 2), 1320, 1320, 1320),
            ("cabinet", new(2027, 2, 3), 100, 1420, 1320),
            ("making-good", new LocalDate(2027, 2, 12), 100m, 1520m, 0m),
        ],
        Small.Plan(Guidance).Payments.Select(p => (p.Line.Cost.Item.Id, p.Day, p.Sum, p.SoFar, p.MayComeBack)));

    [Fact]
    public void What_the_trials_have_paid_rises_by_month_to_what_most_of_them_pay_in_all()
    {
        var plan = Small.Plan(Guidance);
        var months = plan.PaidBy;

        Assert.Equal(new LocalDate(2027, 2, 28), months.Single().Day);
        Assert.Equal((plan.Chances!.Cost.P50, plan.Chances.Cost.P90), (months[0].Middle, months[0].High));
    }

    [Fact]
    public void A_month_counts_only_what_has_fallen_due_by_its_end()
    {
        var certain = Guidance with
        {
            Steps = [.. Guidance.Steps[..3], Small.Step("tidy", 30, after: ["joint"])],
            Tables = Guidance.Tables with { Prices = [Small.Price("price", 100, 100, 100, VatBasis.Including), Small.Price("dear", 1000, 1000, 1000, VatBasis.Including)] },
        };

        // The line without a step of its own is paid with the finish.
        Assert.Equal([(new(2027, 2, 28), 1200m, 1200m), (new(2027, 3, 31), 1300m, 1300m)], Small.Plan(certain).PaidBy.Select(p => (p.Day, p.Middle, p.High)));
    }

    [Fact]
    public void A_line_of_which_nobody_knows_who_pays_is_listed_and_raises_no_total()
    {
        var guidance = Guidance with
        {
            Questions = [.. Small.Empty.Questions, Small.Choice("a.loop", "charged", "free")],
            Costs = [.. Guidance.Costs, Small.Cost("unloop", price: "dear", when: Small.Is("a.loop", "charged")) with { NilWhileOpen = true }],
        };
        PlannedCost Line(Plan plan) => plan.Costs.Single(c => c.Cost.Item.Id == "unloop");
        var (open, charged) = (Small.Plan(guidance), Small.Plan(guidance, ("a.loop", "charged")));

        Assert.Equal((false, true), (Line(open).Added, Line(open).MayBeNil));
        Assert.Equal(Small.Plan(Guidance).Chances!.Cost, open.Chances!.Cost);
        Assert.Equal([new ItemChange(new("cost", "unloop"), ItemState.Settled)], open.FindOutFirst.Single().Rows[0].Changes);
        Assert.Equal((true, false), (Line(charged).Added, Line(charged).MayBeNil));
        Assert.Equal(open.Money.Base + 1320, charged.Money.Base);
    }
}
