using System.Diagnostics;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Reading;
using GuideBuilder.Rendering;
using GuideBuilder.Tests.Cases;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Hostile;

/// <summary>What must hold of every home that can be written down, tried on homes made at random. A finding names the number of its home.</summary>
public sealed class RandomHomeTests
{
    private const int Trials = 4;

    [Fact]
    public void A_home_without_a_history_has_no_fault() =>
        ForEach(Sizes.Of("homes-planned"), seed => AnswerReader.Read(RandomHome.Of(seed, history: false), Content.Guidance).Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()));

    [Fact]
    public void What_somebody_knows_brings_no_hazard_that_not_knowing_it_would_spare() => ForEach(Sizes.Of("homes-planned") / 5, seed =>
    {
        var home = AnswersFiles.Read(RandomHome.Of(seed, history: false));
        var known = home.ByName.Values.Where(a => a is { Standing: Standing.Known, Name: not "home.nation" }).OrderBy(a => a.Name, StringComparer.Ordinal).ToArray();
        var one = known[(int)(seed % (ulong)known.Length)].Name;
        return HazardRegister.Of(home).Except(HazardRegister.Of(home.With(one, null))).Select(h => $"{h} goes when {one} is not known");
    });

    [Fact]
    public void Every_home_is_planned_or_its_faults_are_told() => ForEach(Sizes.Of("homes-bound"), seed =>
    {
        var plan = Plan(RandomHome.Of(seed, history: true));
        return plan.Value is null == plan.Faults.Any(f => f.Severity == Severity.Error) ? [] : ["neither a plan nor faults, or both"];
    });

    [Fact]
    public void Every_plan_adds_up() => ForEach(Sizes.Of("homes-bound"), seed =>
    {
        var plan = Plan(RandomHome.Of(seed, history: false));
        return plan.Value is null ? plan.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()) : PlanSums.Wrong(plan.Value);
    });

    [Fact]
    public void Every_handbook_is_bound_and_says_what_its_data_says() => ForEach(Sizes.Of("homes-bound") / 30, seed =>
    {
        var plan = Plan(RandomHome.Of(seed, history: false));
        var book = plan.Then(p => Handbook.Render(p, Content.Guidance));
        return book.Value is null ? book.Faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString()) : BookSums.Wrong(book.Value, plan.Value!);
    });

    private static Staged<Plan> Plan(SourceText file) => AnswerReader.Read(file, Content.Guidance)
        .Then(a => FactDeriver.Derive(a, Content.Guidance))
        .Then(f => Planner.Plan(f, Content.Guidance, new(Home.Today, Occasion.DefaultSeed, EditionKind.Householder), new(Trials, Trials, 1)));

    private static void ForEach(int count, Func<ulong, IEnumerable<string>> wrong)
    {
        var found = new List<string>();
        for (var seed = 1UL; seed <= (ulong)count && found.Count < 20; seed++)
        {
            var clock = Stopwatch.StartNew();
            try
            {
                found.AddRange(wrong(seed).Select(w => $"home {seed}: {w}"));
            }
            catch (Exception problem) when (problem is not OutOfMemoryException)
            {
                found.Add($"home {seed}: {problem}");
            }

            if (clock.Elapsed > TimeSpan.FromSeconds(60))
            {
                found.Add($"home {seed} took {clock.Elapsed}");
            }
        }

        Findings.AreNone(found);
    }
}
