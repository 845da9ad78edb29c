using System.Collections.Frozen;
using BenchmarkDotNet.Attributes;
using GuideBuilder.Model;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using NodaTime;

namespace GuideBuilder.Benchmarks;

/// <summary>
/// Plans 1,000 and 10,000 activities: finish-to-start links with waits, five calendars, one in a hundred with a not-before day, no longest waits.
/// The larger may take no more than 10 × log 10,000 / log 1,000 = 13.3 times as long as the smaller.
/// </summary>
public class SequenceBenchmark
{
    private static readonly LocalDate Start = new(2026, 3, 2);
    private static readonly string[] Patterns = ["1234567", "12345", "123456", "1234", "2345"];
    private Network _network = new([], [], []);

    /// <summary>How many activities.</summary>
    [Params(1_000, 10_000)]
    public int Count { get; set; }

    /// <summary>Makes the network.</summary>
    [GlobalSetup]
    public void Make() => _network = Network(Count);

    /// <summary>Earliest and latest dates, floats and the deciding chain.</summary>
    [Benchmark]
    public Outcome Plan() => Sequencer.Solve(_network, Start, null);

    private static Network Network(int count)
    {
        var draws = new Xoshiro256(1);
        int Below(int n) => (int)(draws.NextDraw() % (uint)n);
        var calendars = Patterns.Select((p, i) => new WorkingCalendar($"c{i}", p.Select(c => (IsoDayOfWeek)(c - '0')).ToFrozenSet(), FrozenSet<LocalDate>.Empty, LocalDate.MaxIsoValue)).ToArray();
        var activities = Enumerable.Range(0, count)
            .Select(i => new Activity($"a{i}", calendars[Below(calendars.Length)], 1 + Below(3), Below(100) == 0 ? Start.PlusDays(Below(100)) : null, null, null, null, null));

        // Forty layers, so that both sizes fit into the same horizon and have two links an activity.
        var layer = count / 40;
        var links = from i in Enumerable.Range(layer, count - layer)
                    from _ in Enumerable.Range(0, 2)
                    select new Precedence($"a{(((i / layer) - 1) * layer) + Below(layer)}", $"a{i}", LinkKind.FinishToStart, Below(3), calendars[Below(calendars.Length)], false);
        return new([.. activities], [.. links], []);
    }
}
