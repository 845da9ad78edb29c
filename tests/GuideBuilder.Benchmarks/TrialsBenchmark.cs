using System.Collections.Frozen;
using BenchmarkDotNet.Attributes;
using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Benchmarks;

/// <summary>Runs 10,000 trials of a plan of 40 steps with a works day of four crews, drawn durations and a longest wait, on one thread.</summary>
public class TrialsBenchmark
{
    private const int Trials = 10_000;
    private const int Steps = 40;
    private static readonly WorkingCalendar Office = new("office", Enumerable.Range(1, 5).Select(d => (IsoDayOfWeek)d).ToFrozenSet(), FrozenSet<LocalDate>.Empty, LocalDate.MaxIsoValue);
    private static readonly SamplingTable Table = SamplingTable.Days(1, 3, 10);
    private readonly uint[][] _draws = [.. Enumerable.Range(0, Steps).Select(i => Draws.Of(1, $"a{i}", "days", Trials))];
    private readonly CompiledNetwork _net = Sequencer.Compile(Network(), new(new(2026, 3, 2)));

    /// <summary>Dates of every step in every trial, and what decides them.</summary>
    [Benchmark]
    public TrialDates Run() => NetworkTrials.Run(_net, Trials, Draw, 1);

    private void Draw(int trial, Span<int> days)
    {
        for (var i = 0; i < days.Length; i++)
        {
            days[i] = _net.Durations[i] == 1 ? 1 : Table.Step(_draws[i][trial]) + 1;
        }
    }

    private static Network Network()
    {
        var activities = Enumerable.Range(0, Steps).Select(i => new Activity($"a{i}", Office, i is >= 20 and < 24 ? 1 : 3, null, null, null, null, i is >= 20 and < 24 ? "works" : null));
        var links = Enumerable.Range(2, Steps - 2).SelectMany(i => new[] { i - 1, i - 2 }.Select(p => new Precedence($"a{p}", $"a{i}", LinkKind.FinishToStart, 0, Office, false)));
        return new([.. activities], [.. links], [new("a17", "a20", 5, Office)]);
    }
}
