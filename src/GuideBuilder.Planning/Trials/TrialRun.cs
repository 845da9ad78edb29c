using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>All trials of one way: by point the day on which the goal is reached, the sum gross and the VAT in it; and the runs of each set of steps. The same seed gives the same results, whatever the number of threads.</summary>
internal sealed record TrialRun(TrialWorlds Worlds, ImmutableArray<StepRun> Runs, int[] Finishes, decimal[] Sums, decimal[] Taxes, Horizon Horizon)
{
    /// <summary>Trials for the chosen way.</summary>
    public const int Many = 10_000;

    /// <summary>Trials for each other way.</summary>
    public const int Few = 1_000;

    /// <summary>Runs about so many trials of a way.</summary>
    public static TrialRun Of(WayCase way, ImmutableArray<Planned<Step>> steps, PartyCalendars calendars, int trials)
    {
        var worlds = TrialWorlds.Of(way, [.. steps.Where(s => calendars.Has(s.Item.Party))], trials);
        var horizon = new Horizon(Deadlines.Start(way.Facts.Answers, way.Occasion.Today));
        var outlook = new Outlook(way, worlds.Draws.Max() + 1);
        var count = worlds.Draws.Length;
        var (finishes, sums, taxes, runs) = (new int[count], new decimal[count], new decimal[count], new StepRun[worlds.StepSets.Length]);
        Parallel.For(0, runs.Length, i => runs[i] = RunOf(worlds.StepSets[i], way, calendars, horizon, worlds, outlook, finishes));
        Parallel.ForEach(worlds.LineSets, set => outlook.Add(set, worlds.Draws, sums, taxes));
        return new(worlds, [.. runs], finishes, sums, taxes, horizon);
    }

    /// <summary>Quantiles of the gross sum.</summary>
    public Quantiles<decimal> Gross => Quantiles.Of(Sums.Zip(Worlds.Weights));

    /// <summary>Quantiles of the VAT in it.</summary>
    public Quantiles<decimal> Vat => Quantiles.Of(Taxes.Zip(Worlds.Weights));

    /// <summary>Quantiles of the finish, as day numbers.</summary>
    public Quantiles<int> Finish => Quantiles.Of(Finishes.Zip(Worlds.Weights));

    /// <summary>Quantiles of a step's start and of its last day over the trials that have it; null where none has.</summary>
    public (Quantiles<int> Start, Quantiles<int> End)? Of(Step step)
    {
        var having = Having(step).ToArray();
        Quantiles<int> Over(Func<StepRun, int[][]> days) =>
            Quantiles.Of(having.SelectMany(x => days(x.Run)[x.Index].Zip(x.Run.Set.Points, (day, point) => (day, Worlds.Weights[point]))));
        return having.Length == 0 ? null : (Over(r => r.Starts), Over(r => r.Ends));
    }

    /// <summary>The range in which one to nine of ten trials fall, widened to hold the base plan's own day.</summary>
    public DateRange Around(Quantiles<int> days, LocalDate likely) =>
        new(LocalDate.Min(Horizon.Date(days.P10), likely), likely, LocalDate.Max(Horizon.Date(days.P90), likely));

    /// <summary>The same for sums.</summary>
    public static ThreePoint Around(Quantiles<decimal> sums, decimal likely) => ThreePoint.Of(Math.Min(sums.P10, likely), likely, Math.Max(sums.P90, likely))!;

    /// <summary>What a reader is told of them.</summary>
    public Chances Chances(ImmutableArray<Step> steps, LocalDate? neededBy) => new(
        Finishes.Length,
        Worlds.EveryWorld,
        Range(Gross, g => g),
        Range(Finish, Horizon.Date),
        neededBy is { } day ? Share(Finishes.Zip(Worlds.Weights).Where(f => f.First <= Horizon.Day(day)).Sum(f => f.Second)) : null,
        steps.ToFrozenDictionary(s => s.Id, s => Share(Having(s).Sum(x => x.Run.Set.Points.Sum(p => Worlds.Weights[p]))), StringComparer.Ordinal),
        steps.ToFrozenDictionary(s => s.Id, s => Share(Having(s).Sum(x => x.Run.Deciding[x.Index])), StringComparer.Ordinal));

    private static StepRun RunOf(Sharing<ImmutableArray<Step>> set, WayCase way, PartyCalendars calendars, Horizon horizon, TrialWorlds worlds, Outlook outlook, int[] finishes)
    {
        var network = StepNetwork.Of(set.What, way.StepsById, calendars, way.Facts.Answers.Log, null);
        return StepRuns.Of(set, Sequencer.Compile(network.Network, horizon), worlds, outlook, finishes);
    }

    private IEnumerable<(StepRun Run, int Index)> Having(Step step) => Runs.Select(r => (r, r.Set.What.IndexOf(step))).Where(x => x.Item2 >= 0);

    // Sums of many small weights, without the last digits that their order decides.
    private static double Share(double sum) => Math.Round(sum, 9);

    private static QuantileRange<TTo> Range<TFrom, TTo>(Quantiles<TFrom> q, Func<TFrom, TTo> to)
        where TFrom : IComparable<TFrom> => new(to(q.Lowest), to(q.P10), to(q.P50), to(q.P80), to(q.P90), to(q.Highest));
}
