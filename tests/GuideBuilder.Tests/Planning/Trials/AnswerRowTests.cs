using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Trials;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Trials;

public sealed class AnswerRowTests
{
    // The last question is asked only where the first is answered yes, so that it has a row for not being asked.
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions =
        [
            .. Small.Empty.Questions,
            Weighted("a.dig", 3, 1), Weighted("a.loop", 1, 4), Weighted("a.road", 2, 5),
            Weighted("a.lights", 1, 1) with { AskIf = Small.Is("a.dig", "yes") },
        ],
        Steps =
        [
            Small.Step("ask", 2) with { Takes = Small.Takes(DayCount.WorkingDays, 1, 2, 9) },
            Small.Step("dig", 3, after: ["ask"], when: Small.Is("a.dig", "yes")) with { Takes = Small.Takes(DayCount.WorkingDays, 1, 4, 20) },
            Small.Step("loop", 10, after: ["ask"], when: Small.Is("a.loop", "yes")),
            Small.Step("joint", 1, after: ["dig", "loop"]),
        ],
        Costs =
        [
            Small.Cost("alteration"),
            Small.Cost("trench", price: "dear", when: Small.Is("a.dig", "yes")),
            Small.Cost("street", price: "dear", when: Small.Is("a.road", "yes")),
            Small.Cost("signals", when: Small.All(Small.Is("a.dig", "yes"), Small.Is("a.lights", "yes"))),
        ],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 100, 200, 500), Small.Price("dear", 300, 900, 4000)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    private static readonly TrialRun Run = Runs.Of(Guidance, Small.Answers(Guidance));

    [Fact]
    public void Every_world_is_looked_at_and_one_question_may_not_be_asked()
    {
        Assert.True(Run.Worlds.EveryWorld);
        Assert.All(AnswerRows.Of(Run, -1), rows => Assert.Equal(1, rows.Sum(r => r.Share), 1e-12));
        Assert.Equal([0, 1, WorldWalk.None], AnswerRows.Of(Run, -1)[^1].Select(r => r.Answer));
    }

    [Fact]
    public void Each_quantile_of_the_mixture_lies_between_the_smallest_and_the_largest_of_the_rows_and_no_row_reaches_outside() => Everywhere(run =>
    {
        var whole = Quantiles.Of(run.Sums.Zip(run.Worlds.Weights));
        foreach (var rows in AnswerRows.Of(run, -1))
        {
            Between(whole, [.. rows.Select(r => r.Gross)]);
            Between(run.Finish, [.. rows.Select(r => r.Finish)]);
            Assert.All(rows, r => Assert.True(r.Gross.Lowest >= whole.Lowest && r.Gross.Highest <= whole.Highest));
            Assert.All(rows, r => Assert.True(r.Finish.Lowest >= run.Finish.Lowest && r.Finish.Highest <= run.Finish.Highest));
        }
    });

    [Fact]
    public void The_weighted_mean_of_the_rows_is_the_mean_of_the_mixture() => Everywhere(run =>
    {
        foreach (var rows in AnswerRows.Of(run, -1))
        {
            Assert.Equal(1, rows.Sum(r => r.Share), 1e-9);
            Assert.Equal(Runs.Spread(Pounds(run.Sums), run.Worlds.Weights).Mean, rows.Sum(r => r.Share * Runs.Spread(Pounds(r.Sums), r.Weights).Mean), 1e-9);
            Assert.Equal(Runs.Spread(Days(run.Dates.Finish), run.Worlds.Weights).Mean, rows.Sum(r => r.Share * Runs.Spread(Days(r.Finishes), r.Weights).Mean), 1e-9);
        }
    });

    [Fact]
    public void The_variance_to_be_expected_after_an_answer_is_not_above_that_before() => Everywhere(run =>
    {
        foreach (var rows in AnswerRows.Of(run, -1))
        {
            Assert.True(rows.Sum(r => r.Share * Runs.Spread(Pounds(r.Sums), r.Weights).Variance) <= Runs.Spread(Pounds(run.Sums), run.Worlds.Weights).Variance + 1e-6);
            Assert.True(rows.Sum(r => r.Share * Runs.Spread(Days(r.Finishes), r.Weights).Variance) <= Runs.Spread(Days(run.Dates.Finish), run.Worlds.Weights).Variance + 1e-6);
        }
    });

    [Fact]
    public void An_entry_says_what_changes_and_what_is_assumed_and_bad_news_may_widen()
    {
        var plan = Small.Plan(Guidance);
        var dig = plan.FindOutFirst.First(f => f.Question.Id == "dig");

        Assert.Equal(new Value.Option("yes"), dig.Assumed);
        Assert.True(dig.FinishSpread > 0 && dig.CostSpread > 0);
        Assert.All(plan.FindOutFirst.First(f => f.Question.Id == "road").Rows, r => Assert.Null(r.Finish));
        Assert.All(plan.FindOutFirst.First(f => f.Question.Id == "loop").Rows, r => Assert.Null(r.Cost));
        Assert.True(plan.FindOutFirst.Any(f => f.MayWiden));
    }

    [Fact]
    public void An_answer_that_makes_another_question_needless_rules_out_what_waits_for_that_one()
    {
        var hazard = Small.Hazard("signals", Small.Is("a.lights", "yes"));
        var dig = Small.Plan(Guidance with { Hazards = [hazard] }).FindOutFirst.First(f => f.Question.Id == "dig");

        Assert.Empty(dig.Rows.Single(r => r.Answer == new Value.Option("yes")).Changes.Where(c => c.Item.Id == "signals"));
        Assert.Equal(ItemState.RuledOut, dig.Rows.Single(r => r.Answer == new Value.Option("no")).Changes.Single(c => c.Item.Id == "signals").State);
    }

    [Fact]
    public void The_worst_danger_in_which_answers_differ_comes_first()
    {
        Hazard Of(string id, string question, int severity, int likelihood) => Small.Hazard(id, Small.Is(question, "yes")) with { Before = new(severity, likelihood) };
        var plan = Small.Plan(Guidance with { Hazards = [Of("small", "a.loop", 2, 2), Of("great", "a.road", 5, 4), Of("none", "home.nation", 5, 5)] });

        Assert.Equal([("road", 20), ("loop", 4), ("dig", 0)], plan.FindOutFirst.Take(3).Select(f => (f.Question.Id, f.Danger)));
    }

    [Fact]
    public void A_sampled_row_is_the_trials_with_that_answer_forced()
    {
        var guidance = Guidance with
        {
            Questions = [.. Guidance.Questions, .. Enumerable.Range(0, 8).Select(i => Small.YesNo($"b.q{i}"))],
            Steps = [.. Guidance.Steps, .. Enumerable.Range(0, 8).Select(i => Small.Step($"s{i}", 1, when: Small.Is($"b.q{i}", "yes")))],
        };
        var run = Runs.Of(guidance, Small.Answers(guidance));
        var known = Runs.Of(guidance, Small.Answers(guidance, ("a.loop", "yes")));
        var rows = AnswerRows.Of(run, -1)[run.Setting.Walk.Unknown.Select(q => q.Id).ToList().IndexOf("loop")];

        Assert.False(run.Worlds.EveryWorld);
        Assert.Equal(known.Sums[..1000], rows[0].Sums);
        Assert.Equal(known.Dates.Finish[..1000], rows[0].Finishes);
    }

    // The guidance above, and many by chance.
    private static void Everywhere(Action<TrialRun> holds)
    {
        holds(Run);
        var unasked = 0;
        for (var seed = 1UL; seed <= (ulong)Sizes.Of("spreads"); seed++)
        {
            var guidance = RandomGuidance.Of(seed);
            var run = Runs.Of(guidance, Small.Answers(guidance), 200);
            Assert.True(run.Worlds.EveryWorld, $"seed {seed}");
            holds(run);
            unasked += AnswerRows.Of(run, -1).Count(rows => rows.Any(r => r.Answer == WorldWalk.None));
        }

        Assert.True(unasked > 0);
    }

    private static void Between<T>(Quantiles<T> whole, Quantiles<T>[] rows)
        where T : IComparable<T>
    {
        foreach (var at in new Func<Quantiles<T>, T>[] { q => q.Lowest, q => q.P10, q => q.P50, q => q.P80, q => q.P90, q => q.Highest })
        {
            Assert.True(rows.Min(at)!.CompareTo(at(whole)) <= 0 && rows.Max(at)!.CompareTo(at(whole)) >= 0);
        }
    }

    private static IEnumerable<double> Pounds(long[] pennies) => pennies.Select(p => p / 100.0);

    private static IEnumerable<double> Days(int[] days) => days.Select(d => (double)d);

    private static Question Weighted(string name, decimal yes, decimal no) => Small.YesNo(name) with
    {
        Options = [new("yes", Small.Words("yes"), yes, true, Place.None), new("no", Small.Words("no"), no, false, Place.None)],
    };
}
