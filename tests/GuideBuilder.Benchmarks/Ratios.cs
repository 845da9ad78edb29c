using BenchmarkDotNet.Reports;

namespace GuideBuilder.Benchmarks;

/// <summary>Says in one line how the time of a plan grows with its size.</summary>
internal static class Ratios
{
    // 10 × log 10,000 / log 1,000.
    private const double Most = 10.0 * 4 / 3;

    /// <summary>Prints the ratio of the larger network to the smaller, where both were measured.</summary>
    public static void Print(IEnumerable<Summary> summaries)
    {
        var plans = summaries.SelectMany(s => s.Reports)
            .Where(r => r.BenchmarkCase.Descriptor.Type == typeof(SequenceBenchmark) && r.ResultStatistics is not null)
            .ToDictionary(r => (int)r.BenchmarkCase.Parameters[nameof(SequenceBenchmark.Count)], r => r.ResultStatistics!.Median);
        if (plans.TryGetValue(10_000, out var larger) && plans.TryGetValue(1_000, out var smaller))
        {
            var ratio = larger / smaller;
            Console.WriteLine(FormattableString.Invariant($"10,000 activities take {ratio:0.00} times as long as 1,000; n log n allows {Most:0.00}: {(ratio <= Most ? "kept" : "not kept")}"));
        }
    }
}
