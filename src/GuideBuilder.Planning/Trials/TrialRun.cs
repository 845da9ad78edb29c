using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>All trials of one way. The same seed gives the same results, whatever the number of threads.</summary>
internal sealed record TrialRun(ImmutableArray<ClassRun> Runs, Horizon Horizon)
{
    /// <summary>Trials for the chosen way.</summary>
    public const int Many = 1_000;

    /// <summary>Trials for each other way.</summary>
    public const int Few = 200;

    /// <summary>Runs about so many trials of a way.</summary>
    public static TrialRun Of(WayCase way, ImmutableArray<Planned<Step>> steps, PartyCalendars calendars, int trials)
    {
        var classes = WorldClasses.Of(way, [.. steps.Where(s => calendars.Has(s.Item.Party))], trials);
        var horizon = new Horizon(Deadlines.Start(way.Facts.Answers, way.Occasion.Today));
        var outlook = new Outlook(way, classes.Max(c => c.Trials.Max()) + 1);
        var runs = new ClassRun[classes.Length];
        Parallel.For(0, classes.Length, i => runs[i] = RunOf(classes[i], way, calendars, horizon, outlook));
        return new([.. runs], horizon);
    }

    /// <summary>How many trials there were.</summary>
    public int Count => Runs.Sum(r => r.Finish.Length);

    /// <summary>Quantiles of the gross sum.</summary>
    public Quantiles<decimal> Gross => Quantiles.Of(Runs.SelectMany(r => r.Gross.Select(g => (g, r.Class.WeightEach))));

    /// <summary>Quantiles of the VAT in it.</summary>
    public Quantiles<decimal> Vat => Quantiles.Of(Runs.SelectMany(r => r.Vat.Select(g => (g, r.Class.WeightEach))));

    /// <summary>Quantiles of the finish, as day numbers.</summary>
    public Quantiles<int> Finish => Quantiles.Of(Runs.SelectMany(r => r.Finish.Select(d => (d, r.Class.WeightEach))));

    /// <summary>Quantiles of a step's start and of its last day over the trials that have it; null where none has.</summary>
    public (Quantiles<int> Start, Quantiles<int> End)? Of(Step step)
    {
        var having = Runs.Select(r => (Run: r, Index: r.Class.Steps.IndexOf(step))).Where(x => x.Index >= 0).ToArray();
        return having.Length == 0
            ? null
            : (Quantiles.Of(having.SelectMany(x => x.Run.Starts[x.Index].Select(d => (d, x.Run.Class.WeightEach)))),
               Quantiles.Of(having.SelectMany(x => x.Run.Ends[x.Index].Select(d => (d, x.Run.Class.WeightEach)))));
    }

    /// <summary>The range in which one to nine of ten trials fall, widened to hold the base plan's own day.</summary>
    public DateRange Around(Quantiles<int> days, LocalDate likely) =>
        new(LocalDate.Min(Horizon.Date(days.P10), likely), likely, LocalDate.Max(Horizon.Date(days.P90), likely));

    /// <summary>The same for sums.</summary>
    public static ThreePoint Around(Quantiles<decimal> sums, decimal likely) => ThreePoint.Of(Math.Min(sums.P10, likely), likely, Math.Max(sums.P90, likely))!;

    /// <summary>What a reader is told of them.</summary>
    public Chances Chances(ImmutableArray<Step> steps, LocalDate? neededBy) => new(
        Count,
        Runs.All(r => r.Class.EveryWorld),
        Range(Gross, g => g),
        Range(Finish, Horizon.Date),
        neededBy is { } day ? Weigh(r => r.Finish.Count(f => f <= Horizon.Day(day))) : null,
        steps.ToFrozenDictionary(s => s.Id, s => Runs.Where(r => r.Class.Steps.Contains(s)).Sum(r => r.Class.Share), StringComparer.Ordinal),
        steps.ToFrozenDictionary(s => s.Id, s => Weigh(r => r.Class.Steps.IndexOf(s) is >= 0 and var i ? r.Deciding[i] : 0), StringComparer.Ordinal));

    private static ClassRun RunOf(WorldClass worlds, WayCase way, PartyCalendars calendars, Horizon horizon, Outlook outlook)
    {
        var network = StepNetwork.Of(worlds.Steps, way.StepsById, calendars, way.Facts.Answers.Log, null);
        return ClassRuns.Of(worlds, Sequencer.Compile(network.Network, horizon), outlook);
    }

    private double Weigh(Func<ClassRun, int> count) => Runs.Sum(r => count(r) * r.Class.WeightEach);

    private static QuantileRange<TTo> Range<TFrom, TTo>(Quantiles<TFrom> q, Func<TFrom, TTo> to)
        where TFrom : IComparable<TFrom> => new(to(q.Lowest), to(q.P10), to(q.P50), to(q.P80), to(q.P90), to(q.Highest));
}
