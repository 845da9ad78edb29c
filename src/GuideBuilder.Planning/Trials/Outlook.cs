using System.Collections.Concurrent;
using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>What all trials of one way share: the draws of steps, events and lines, each made once, and the prices. Safe from several threads.</summary>
internal sealed class Outlook
{
    private readonly WayCase _way;
    private readonly int _trials;
    private readonly ImmutableArray<Step> _steps;
    private readonly ImmutableArray<Cost> _costs;
    private readonly CommonDraws _common;
    private readonly ConcurrentDictionary<string, uint[]> _draws = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<(string Cost, decimal Quantity, Paper? Paper, bool Carries), DrawnLine> _lines = new();
    private readonly ConcurrentDictionary<string, (string Cost, DrawnLine Line)[]> _sets = new(StringComparer.Ordinal);
    private readonly FrozenDictionary<string, int> _dueAt;
    private readonly bool _isQuoted;

    /// <summary>The outlook of a way for so many trials; what the log says is done has no chance events any more.</summary>
    public Outlook(WayCase way, ImmutableArray<Step> steps, ImmutableArray<Cost> costs, int trials)
    {
        (_way, _trials, _steps, _costs, _common) = (way, trials, steps, costs, CommonDraws.Of(way.Guidance));
        _dueAt = costs.Select(c => (c.Id, Place: steps.Select(s => s.Id).ToList().IndexOf(c.DueAt ?? ""))).ToFrozenDictionary(c => c.Id, c => c.Place, StringComparer.Ordinal);
        _isQuoted = way.Facts.Answers.Papers.Any(p => p.Kind == PaperKind.Quotation) || way.Facts.Answers.Log.Any(e => e.What == LogKind.Quoted);
        Durations = [.. steps.Select(s => _common.Duration(s.Takes, way.Occasion.Seed, s.Id, trials))];
        var done = LogPins.Of(way.Facts.Answers.Log, way.StepsById.Values).Where(p => p.Value.Done is not null).Select(p => p.Key).ToFrozenSet(StringComparer.Ordinal);
        Hours = [.. steps.Select(s => s.IsDuty && Steps.Hours.Of(s) is { High: > 0 } hours ? _common.Hours(hours, way.Occasion.Seed, s.Id, trials) : null)];
        Events = [.. steps.SelectMany((s, i) => s.MayHappen.Select(e => EventOf(done.Contains(s.Id) ? e with { Chance = 0 } : e, i)))];
    }

    /// <summary>The duration of each step.</summary>
    public DrawnDuration[] Durations { get; }

    /// <summary>The duration of each step in a world.</summary>
    public DrawnDuration[] DurationsIn(WorldContent content)
    {
        if (content.Takes.IsEmpty)
        {
            return Durations;
        }

        var durations = (DrawnDuration[])Durations.Clone();
        foreach (var (step, takes) in content.Takes)
        {
            durations[step] = _common.Duration(takes, _way.Occasion.Seed, _steps[step].Id, _trials);
        }

        return durations;
    }

    /// <summary>The household's own work in each step; null where there is none.</summary>
    public DrawnHours?[] Hours { get; }

    /// <summary>The events of all steps, in their order.</summary>
    public DrawnEvent[] Events { get; }

    /// <summary>What one trial of a world comes to, in pennies: its lines, a quotation that counts the same in all, and what happens besides.</summary>
    public (long Gross, long Vat) SumOf(WorldContent content, int trial)
    {
        var (gross, vat) = (0L, 0L);
        foreach (var (_, line) in SetOf(content))
        {
            var sum = line.Of(trial);
            (gross, vat) = (gross + sum.Gross, vat + sum.Vat);
        }

        for (var e = 0; e < Events.Length; e++)
        {
            if (content.Events[e] && Events[e] is { Cost: { } cost } && Events[e].Happens(trial))
            {
                var sum = cost.Of(trial);
                (gross, vat) = (gross + sum.Gross, vat + sum.Vat);
            }
        }

        return (gross, vat);
    }

    /// <summary>What is paid in one trial of a world, in pennies, each sum with the place of the step at which it falls due (below nothing for none).</summary>
    public IEnumerable<(int Due, long Gross)> Paid(WorldContent content, int trial) =>
        SetOf(content).Select(l => (_dueAt.GetValueOrDefault(l.Cost, -1), l.Line.Of(trial).Gross))
            .Concat(Events.Where((e, i) => content.Events[i] && e.Cost is not null && e.Happens(trial)).Select(e => (e.Step, e.Cost!.Of(trial).Gross)));

    /// <summary>What those lines (cost ids) alone come to, gross.</summary>
    public long GrossOf(FrozenSet<string> costs, WorldContent content, int trial)
    {
        var gross = 0L;
        foreach (var (cost, line) in SetOf(content))
        {
            gross += costs.Contains(cost) ? line.Of(trial).Gross : 0;
        }

        return gross;
    }

    /// <summary>What one trial comes to, gross, of a world that differs from another, whose sum is known, in no more than what is listed.</summary>
    public long GrossOf(WorldContent content, int trial, WorldContent other, long sum, Affected affected)
    {
        if (_isQuoted)
        {
            return SumOf(content, trial).Gross;
        }

        foreach (var l in affected.Lines)
        {
            if (content.Numbers[l] != other.Numbers[l])
            {
                sum += GrossOf(l, content.Numbers[l], trial) - GrossOf(l, other.Numbers[l], trial);
            }
        }

        foreach (var e in affected.Events)
        {
            if (content.Events[e] != other.Events[e] && Events[e] is { Cost: { } cost } && Events[e].Happens(trial))
            {
                sum += content.Events[e] ? cost.Of(trial).Gross : -cost.Of(trial).Gross;
            }
        }

        return sum;
    }

    private long GrossOf(int line, decimal? number, int trial) => number is { } n ? LineOf(_costs[line], n, null).Of(trial).Gross : 0;

    /// <summary>The household's own hours in one trial of a world, in hundredths.</summary>
    public int HoursOf(WorldContent content, int trial)
    {
        var hours = 0;
        for (var s = 0; s < Hours.Length; s++)
        {
            hours += content.Steps[s] && Hours[s] is { } work ? work.Of(trial) : 0;
        }

        foreach (var (step, own) in content.Work)
        {
            hours += _common.Hours(own, _way.Occasion.Seed, _steps[step].Id, _trials).Of(trial) - (Hours[step]?.Of(trial) ?? 0);
        }

        return hours;
    }

    private (string Cost, DrawnLine Line)[] SetOf(WorldContent content) => _sets.GetOrAdd(content.LineKey, _ => LinesOf(content));

    private (string Cost, DrawnLine Line)[] LinesOf(WorldContent content)
    {
        var lines = _costs.Select((c, i) => (Cost: c, Number: content.Numbers[i])).Where(l => l.Number is not null).ToArray();
        var quoted = _isQuoted
            ? Quotations.Of([.. lines.Select(l => l.Cost)], _way.Facts.Answers, _way.Guidance.Steps, _way.Occasion.Today)
            : FrozenDictionary<string, Quoted>.Empty;
        return [.. lines.Select(l => (l.Cost.Id, LineOf(l.Cost, l.Number!.Value, quoted.GetValueOrDefault(l.Cost.Id))))];
    }

    private DrawnLine LineOf(Cost cost, decimal quantity, Quoted? quoted) => _lines.GetOrAdd((cost.Id, quantity, quoted?.Paper, quoted?.Carries ?? false), _ =>
    {
        var price = CostPlanner.PriceOf(cost, _way.Guidance);
        return new(CostPlanner.SumOf(price, quantity, quoted, _way.Market), DrawsOf(cost.Id, price));
    });

    // What is priced by one kind of market is dear or cheap together, as far as its table says.
    private uint[] DrawsOf(string item, Price price) => _draws.GetOrAdd(item, _ =>
    {
        var own = Of(item, "cost");
        var kind = _way.Guidance.Tables.Regions.FirstOrDefault(r => r.Id == price.RegionFactor);
        return kind is not { Together: > 0 } ? own : Draws.Shared(own.AsSpan(0, _trials), Of(item, "together"), Of(kind.Id, "market"), (double)kind.Together);
    });

    private uint[] Of(string item, string purpose) => _common.Of(_way.Occasion.Seed, item, purpose, _trials);

    private DrawnEvent EventOf(ChanceEvent e, int step)
    {
        var cost = _way.Guidance.Costs.FirstOrDefault(c => e.Costs.Contains(c.Id) && Judge.Of(c.Head.AppliesIf, _way.Lookup).Truth != Truth.Fails);
        var price = cost is null ? null : CostPlanner.PriceOf(cost, _way.Guidance);
        return new(
            step,
            e,
            Of(e.Id, "event"),
            e.TakesMore is { } more ? _common.Duration(more, _way.Occasion.Seed, e.Id, _trials) : null,
            price is not null && price.Currency == _way.Nation.Currency ? new(Pricing.Of(price, 1, _way.Market), DrawsOf(e.Id, price)) : null);
    }
}
