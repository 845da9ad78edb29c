using System.Collections.Concurrent;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>What all trials of one way share: the draws of steps and lines, each made once, and the prices.</summary>
internal sealed class Outlook(WayCase way, int trials)
{
    private readonly ConcurrentDictionary<string, DrawnDuration> _durations = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, uint[]> _draws = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Cost, decimal Quantity, Paper? Paper, bool Carries), DrawnLine> _lines = new();
    private readonly bool _isQuoted = way.Facts.Answers.Papers.Any(p => p.Kind == PaperKind.Quotation) || way.Facts.Answers.Log.Any(e => e.What == LogKind.Quoted);

    /// <summary>The duration of a step in each trial.</summary>
    public DrawnDuration DurationOf(Step step) => _durations.GetOrAdd(step.Id, _ => new(step, way.Occasion.Seed, trials));

    /// <summary>Adds up a set of lines in each of its trials; a quotation that counts is the same in all.</summary>
    public void Add(Sharing<ImmutableArray<(Cost Cost, decimal Quantity)>> set, ImmutableArray<int> draws, decimal[] sums, decimal[] taxes)
    {
        foreach (var line in LinesOf(set.What))
        {
            foreach (var point in set.Points)
            {
                var gross = line.Gross(draws[point]);
                sums[point] += gross;
                taxes[point] += line.VatIn(gross);
            }
        }
    }

    private DrawnLine[] LinesOf(ImmutableArray<(Cost Cost, decimal Quantity)> lines)
    {
        var quoted = _isQuoted
            ? Quotations.Of([.. lines.Select(l => l.Cost)], way.Facts.Answers, way.Guidance.Steps, way.Occasion.Today)
            : FrozenDictionary<string, Quoted>.Empty;
        return [.. lines.Select(l => LineOf(l.Cost, l.Quantity, quoted.GetValueOrDefault(l.Cost.Id)))];
    }

    private DrawnLine LineOf(Cost cost, decimal quantity, Quoted? quoted) => _lines.GetOrAdd(
        (cost.Id, quantity, quoted?.Paper, quoted?.Carries ?? false),
        _ => new(CostPlanner.SumOf(CostPlanner.PriceOf(cost, way.Guidance), quantity, quoted, way.Market), DrawsOf(cost)));

    private uint[] DrawsOf(Cost cost) => _draws.GetOrAdd(cost.Id, id => Draws.Of(way.Occasion.Seed, id, "cost", trials));
}
