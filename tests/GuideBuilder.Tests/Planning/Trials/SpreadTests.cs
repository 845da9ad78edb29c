using GuideBuilder.Model;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Trials;

/// <summary>How the spread of totals and finishes follows the three points of what they are made of, under guidances by chance.</summary>
public sealed class SpreadTests
{
    [Fact]
    public void Moving_the_three_points_of_a_line_that_is_always_there_moves_every_quantile_of_the_total_by_as_much() => Everywhere((guidance, _) =>
    {
        var first = guidance.Tables.Prices[0] with { StatedAs = VatBasis.Including };
        var stated = With(guidance, first);
        var plain = Run(stated);
        var moved = Run(With(stated, first with { Amount = first.Amount.Map(a => a + 150) }, ["c0"]));
        var (low, high) = (plain.Gross, moved.Gross);

        Assert.Equal(
            [150, 150, 150, 150, 150, 150],
            new[] { high.Lowest - low.Lowest, high.P10 - low.P10, high.P50 - low.P50, high.P80 - low.P80, high.P90 - low.P90, high.Highest - low.Highest });
    });

    [Fact]
    public void Raising_a_high_value_lowers_neither_the_mean_nor_the_highest_possible_total() => Everywhere((guidance, before) =>
    {
        foreach (var price in guidance.Tables.Prices)
        {
            var raised = With(guidance, price with { Amount = ThreePoint.Of(price.Amount.Low, price.Amount.Likely, price.Amount.High + 333)! });
            var after = Run(raised);

            Assert.True(Mean(after) >= Mean(before) - 1e-9);
            Assert.True(HighestPossible(raised, after) >= HighestPossible(guidance, before));
            Assert.True(after.Gross.Highest <= HighestPossible(raised, after));
        }
    });

    [Fact]
    public void Where_nothing_is_uncertain_every_figure_is_the_plain_sum_and_the_plain_critical_path()
    {
        for (var seed = 1UL; seed <= (ulong)Sizes.Of("spreads"); seed++)
        {
            var guidance = Certain(RandomGuidance.Of(seed));
            var plan = Small.Plan(guidance, [.. guidance.Questions.Where(q => q.Section == "a").Select(q => (q.Name, (object)"yes"))]);
            var (sum, last) = (plan.Money.Base, plan.Schedule.BaseFinish);

            Assert.Equal(sum, plan.Costs.Where(c => c.Added).Sum(c => c.Gross.Low));
            Assert.Equal(new(sum, sum, sum, sum, sum, sum), plan.Chances!.Cost);
            Assert.Equal(new QuantileRange<LocalDate>(last, last, last, last, last, last), plan.Chances.Finish);
            Assert.Equal(LongestChain(plan), last);
        }
    }

    // Every line at its high value and every event that can happen, in the dearest world: what drawn trials may come near to and never pass.
    private static decimal HighestPossible(Guidance guidance, TrialRun run)
    {
        var market = new Market(guidance.Nations[0], null, guidance.Tables);
        decimal High(Cost cost, decimal number) => Pricing.Of(CostPlanner.PriceOf(cost, guidance), number, market).Gross.High;
        var lines = guidance.Costs.Where(c => !guidance.ChanceCosts.Contains(c.Id)).ToArray();
        return run.Worlds.Contents.DistinctBy(c => (c.LineKey, c.StepKey)).Max(content =>
            lines.Select((c, i) => content.Numbers[i] is { } number ? High(c, number) : 0).Sum()
            + run.Setting.Outlook.Events.Select((e, i) => content.Events[i] && e.Event.Chance > 0 ? e.Event.Costs.Sum(id => High(guidance.Costs.First(c => c.Id == id), 1)) : 0).Sum());
    }

    // The finish by hand: each step begins on the working day after the last of those before it, those left out handing on.
    private static LocalDate LongestChain(Plan plan)
    {
        var ends = new Dictionary<string, LocalDate>(StringComparer.Ordinal);
        foreach (var step in plan.Steps)
        {
            var before = step.Step.Item.After.Select(l => ends[l.Step]).DefaultIfEmpty(Small.Today.PlusDays(-1)).Max();
            ends[step.Step.Item.Id] = step.Step.IsPresent ? AfterWork(before, (int)step.Step.Item.Takes.Amount.Likely) : before;
        }

        return plan.Steps.Where(s => s.Step.IsPresent).Select(s => ends[s.Step.Item.Id]).DefaultIfEmpty(Small.Today).Max();
    }

    private static LocalDate AfterWork(LocalDate day, int working)
    {
        while (working > 0)
        {
            day = day.PlusDays(1);
            working -= day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday ? 0 : 1;
        }

        return day;
    }

    private static Guidance Certain(Guidance guidance) => guidance with
    {
        Questions = [.. guidance.Questions.Select(q => q with { AskIf = Condition.Always })],
        Steps = [.. guidance.Steps.Select(s => s with { MayHappen = [], Takes = s.Takes with { Amount = ThreePoint.Certain(s.Takes.Amount.Likely) } })],
        Tables = guidance.Tables with { Prices = [.. guidance.Tables.Prices.Select(p => p with { Amount = ThreePoint.Certain(p.Amount.Likely), StatedAs = p.StatedAs == VatBasis.NotStated ? VatBasis.Including : p.StatedAs })] },
    };

    // The last argument leaves the changed price to those lines alone.
    private static Guidance With(Guidance guidance, Price price, string[]? only = null)
    {
        var changed = only is null ? price : price with { Id = "changed" };
        return guidance with
        {
            Costs = only is null ? guidance.Costs : [.. guidance.Costs.Select(c => only.Contains(c.Id) ? c with { Price = changed.Id } : c)],
            Tables = guidance.Tables with { Prices = [.. guidance.Tables.Prices.Select(p => p.Id == price.Id && only is null ? changed : p), .. only is null ? [] : new[] { changed }] },
        };
    }

    private static void Everywhere(Action<Guidance, TrialRun> holds)
    {
        for (var seed = 1UL; seed <= (ulong)Sizes.Of("spreads"); seed++)
        {
            var guidance = RandomGuidance.Of(seed);
            holds(guidance, Run(guidance));
        }
    }

    private static TrialRun Run(Guidance guidance) => Runs.Of(guidance, Small.Answers(guidance), 200);

    private static double Mean(TrialRun run) => Runs.Spread(run.Sums.Select(s => (double)s), run.Worlds.Weights).Mean;
}
