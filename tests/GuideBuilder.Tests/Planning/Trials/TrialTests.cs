using GuideBuilder.Model;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

public sealed class TrialTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions =
        [
            .. Small.Empty.Questions,
            .. Enumerable.Range(0, 8).Select(i => Small.YesNo($"a.q{i}")),
            Small.Amount("a.length", "m", 8, 3),
        ],
        Facts = [Small.Fact("deep", "no", (Small.All(Small.Is("a.q0", "yes"), Small.Is("a.q1", "no")), "yes"))],
        Steps =
        [
            Small.Step("first", 3) with { Takes = Small.Takes(DayCount.WorkingDays, 2, 3, 9) },
            .. Enumerable.Range(0, 8).Select(i => Small.Step($"s{i}", i + 1, after: ["first"], when: Small.Is($"a.q{i}", "yes"))),
            Small.Step("shore", 4, after: ["first"], when: Small.Is("deep", "yes")),
        ],
        Costs = [Small.Cost("alteration"), Small.Cost("trench", quantity: "a.length")],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 100, 200, 500)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    [Fact]
    public void Without_anything_uncertain_every_quantile_is_the_plain_plan()
    {
        var guidance = Guidance with
        {
            Questions = Small.Empty.Questions,
            Facts = [],
            Steps = [Small.Step("a", 3), Small.Step("b", 4, after: ["a"])],
            Costs = [Small.Cost("alteration"), Small.Cost("dig")],
            Tables = Guidance.Tables with { Prices = [Small.Price("price", 150, 150, 150)] },
        };
        var plan = Small.Plan(guidance);

        Assert.Equal(new(360, 360, 360, 360, 360, 360), plan.Chances!.Cost);
        Assert.Equal(new(plan.Schedule.Finish.Likely, plan.Schedule.Finish.Early, plan.Schedule.Finish.Late, new(2027, 2, 9), new(2027, 2, 9), new(2027, 2, 9)), plan.Chances.Finish);
        Assert.Equal((1, 1), (plan.Chances.Deciding["a"], plan.Chances.Deciding["b"]));
    }

    [Fact]
    public void Each_day_of_the_rising_line_has_the_share_that_it_would_have_as_the_needed_by_date()
    {
        var guidance = Guidance with { Questions = [.. Guidance.Questions, Small.Question("dates.needed-by", QuestionKind.Date)] };
        var days = Small.Plan(guidance).Chances!.FinishByTenths;

        Assert.True(days.Length > 3);
        Assert.Equal(days.Select(d => d.Share).Order().Distinct(), days.Select(d => d.Share));
        Assert.Equal(1, days[^1].Share, 9);
        Assert.All(days, d => Assert.Equal(d.Share, Small.Plan(guidance, ("dates.needed-by", d.Day)).Chances!.MeetsDate!.Value, 9));
    }

    [Fact]
    public void A_step_that_a_limit_only_draws_along_decides_nothing()
    {
        var guidance = Small.Empty with
        {
            Steps =
            [
                Small.Step("plan", 10) with { Takes = Small.Takes(DayCount.WorkingDays, 5, 10, 30) },
                Small.Step("dig", 2) with { Takes = Small.Takes(DayCount.WorkingDays, 1, 2, 4), NoLaterThan = [new("joint", 3, DayCount.CalendarDays, null, Place.None)] },
                Small.Turn("joint", "operator", 1) with { After = [Small.After("plan"), Small.After("dig")] },
            ],
        };
        var deciding = Small.Plan(guidance).Chances!.Deciding;

        Assert.Equal((1, 0), (deciding["plan"], deciding["dig"]));
    }

    [Fact]
    public void The_same_seed_gives_the_same_chances_and_another_seed_others()
    {
        var answers = Small.Answers(Guidance);
        Chances Of(ulong seed) => GuideBuilder.Planning.Planner.Plan(FactDeriver.Derive(answers, Guidance).Value!, Guidance, new(Small.Today, seed, EditionKind.Householder)).Value!.Chances!;

        Assert.Equal((Of(1).Cost, Of(1).Finish), (Of(1).Cost, Of(1).Finish));
        Assert.NotEqual(Of(1).Cost, Of(2).Cost);
    }

    [Fact]
    public void Many_classes_are_sampled_and_few_are_all_looked_at()
    {
        var few = Small.Plan(Guidance, [.. Enumerable.Range(0, 6).Select(i => ($"a.q{i}", (object)"no"))]).Chances!;
        var many = Small.Plan(Guidance).Chances!;

        Assert.Equal((true, 8 * 1250), (few.EveryWorld, few.Trials));
        Assert.Equal((false, 10_000), (many.EveryWorld, many.Trials));
        Assert.Equal(0.5, many.StepShares["s3"], 0.02);
        Assert.Equal(0.25, many.StepShares["shore"], 0.02);
    }

    [Fact]
    public void Raising_every_price_by_the_same_whole_amount_raises_every_quantile_by_it()
    {
        var dearer = Guidance with { Costs = [Guidance.Costs[0] with { Price = "dearer" }, Guidance.Costs[1]], Tables = Guidance.Tables with { Prices = [.. Guidance.Tables.Prices, Small.Price("dearer", 150, 250, 550)] } };
        var (before, after) = (Small.Plan(Guidance).Chances!.Cost, Small.Plan(dearer).Chances!.Cost);

        Assert.Equal(
            new QuantileRange<decimal>(60, 60, 60, 60, 60, 60),
            new(after.Lowest - before.Lowest, after.P10 - before.P10, after.P50 - before.P50, after.P80 - before.P80, after.P90 - before.P90, after.Highest - before.Highest));
    }

    [Fact]
    public void The_quick_reading_of_a_world_agrees_with_the_full_one()
    {
        var way = WayCase.Of(Guidance.Ways[0], Small.Answers(Guidance), World.Assumed(Small.Answers(Guidance), Guidance.Questions), Guidance, new(Small.Today, 1, EditionKind.Householder), Guidance.Nations[0]).Case;
        for (var world = 0; world < 256; world++)
        {
            var full = World.Of(way.Facts.Answers, Guidance.Questions, (q, c) => c[q.Id is "length" ? world % 2 : (world >> (q.Id[1] - '0')) & 1]);
            var quick = new DefiniteWorld(way.Facts, way.Rules, Guidance.Tables);
            full.Taken.ToList().ForEach(t => quick.Take(t.Question.Name, t.Value));
            var facts = FactDeriver.Under(full.Answers, Guidance, way.Way).Facts;

            Assert.All(Guidance.Steps, s => Assert.Equal(Judge.Of(s.Head.AppliesIf, n => facts[n]).Truth == Truth.Holds, quick.Holds(s.Head.AppliesIf)));
        }
    }

    [Fact]
    public void Only_questions_that_change_steps_or_money_make_worlds()
    {
        var guidance = Guidance with { Questions = [.. Guidance.Questions, Small.YesNo("a.idle")], Hazards = [Small.Hazard("h", Small.Is("a.idle", "yes"))] };
        var way = WayCase.Of(guidance.Ways[0], Small.Answers(guidance), World.Assumed(Small.Answers(guidance), guidance.Questions), guidance, new(Small.Today, 1, EditionKind.Householder), guidance.Nations[0]).Case;
        var reasons = GuideBuilder.Planning.Items.Plan(guidance.Steps, way.Lookup).Select(s => s.Because);

        Assert.DoesNotContain("a.idle", Unknowns.Of(way, reasons, guidance.Costs).Select(q => q.Name));
        Assert.Equal(9, Unknowns.Of(way, reasons, guidance.Costs).Length);
    }
}
