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

    // A long run may be done in pieces: each begins with the home of this number.
    private static readonly ulong From = ulong.TryParse(Environment.GetEnvironmentVariable("FROM_HOME"), out var from) ? from : 1;

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
    public void Every_home_that_is_read_is_planned_and_adds_up()
    {
        var read = 0;
        ForEach(Sizes.Of("homes-bound"), seed => Read(seed) is not { } answers ? [] : Wrong(answers, ref read));
        Assert.True(read > Sizes.Of("homes-bound") * 6 / 10, $"only {read} homes were read");
    }

    private static IEnumerable<string> Wrong(AnswerSet answers, ref int read)
    {
        read++;
        var plan = Plan(answers);
        return plan.Value is null ? Told(plan.Faults) : [.. Told(plan.Faults), .. PlanSums.Wrong(plan.Value)];
    }

    [Fact]
    public void Every_handbook_is_bound_and_says_what_its_data_says() => ForEach(Sizes.Of("homes-bound") / 30, seed =>
    {
        if (Read(seed) is not { } read)
        {
            return [];
        }

        var plan = Plan(read);
        var book = plan.Then(p => Handbook.Render(p, Content.Guidance));
        return book.Value is null ? Told(book.Faults) : [.. BookSums.Wrong(book.Value, plan.Value!), .. BookFigures.Wrong(book.Value, plan.Value!)];
    });

    // Every other home has papers and a log, which may contradict each other: then Reading must have said so, and that is that.
    private static AnswerSet? Read(ulong seed)
    {
        var history = seed % 2 == 0;
        var read = AnswerReader.Read(RandomHome.Of(seed, history), Content.Guidance, Home.Today);
        return read.Value is null && history && Told(read.Faults).Any() ? null : read.Value ?? throw new InvalidOperationException(string.Join('\n', read.Faults));
    }

    private static Staged<Plan> Plan(AnswerSet answers) => FactDeriver.Derive(answers, Content.Guidance)
        .Then(f => Planner.Plan(f, Content.Guidance, new(Home.Today, Occasion.DefaultSeed, EditionKind.Householder), new(Trials, Trials, 1)));

    private static IEnumerable<string> Told(IEnumerable<Fault> faults) => faults.Where(f => f.Severity == Severity.Error).Select(f => f.ToString());

    private static void ForEach(int count, Func<ulong, IEnumerable<string>> wrong)
    {
        var found = new List<string>();
        for (var seed = From; seed < From + (ulong)count && found.Count < 20; seed++)
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
