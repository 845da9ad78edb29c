using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>All trials of one way: by point the dates of its steps, the sum gross and the VAT in it, in pennies, and the household's own hours, in hundredths. The same seed gives the same results, whatever the number of threads.</summary>
internal sealed record TrialRun(TrialSetting Setting, TrialWorlds Worlds, StepRun Dates, long[] Sums, long[] Taxes, int[] Work)
{
    /// <summary>Trials for the chosen way.</summary>
    public const int Many = 10_000;

    /// <summary>Trials for each other way.</summary>
    public const int Few = 1_000;

    private const decimal Hundred = 100;
    private Quantiles<decimal>? _gross;
    private Quantiles<int>? _finish;

    /// <summary>The days of the plan.</summary>
    public Horizon Horizon => Setting.Pool.Horizon;

    /// <summary>Runs about so many trials of a way, on at most so many threads (-1 for as many as there are).</summary>
    public static TrialRun Of(WayCase way, ImmutableArray<Planned<Step>> steps, PartyCalendars calendars, NeededFor needed, Effort effort, int trials)
    {
        var setting = TrialSetting.Of(way, steps, calendars, needed, trials == 0 ? 1 : Math.Max(trials, TrialWorlds.LeastTrials));
        var worlds = TrialWorlds.Of(setting.Walk, setting.Contents, trials);
        var count = worlds.Draws.Length;
        var (sums, taxes, hours) = (new long[count], new long[count], new int[count]);
        var dates = setting.Runner.Run(worlds.Contents, worlds.Draws, worlds.Weights, effort.Threads);
        Parallel.For(0, count, new() { MaxDegreeOfParallelism = effort.Threads }, p =>
        {
            (sums[p], taxes[p]) = setting.Outlook.SumOf(worlds.Contents[p], worlds.Draws[p]);
            hours[p] = setting.Outlook.HoursOf(worlds.Contents[p], worlds.Draws[p]);
        });
        return new(setting, worlds, dates, sums, taxes, hours);
    }

    /// <summary>Quantiles of the gross sum.</summary>
    public Quantiles<decimal> Gross => _gross ??= Money(Sums);

    /// <summary>What one, five and nine of ten trials do not exceed of those lines (cost ids) alone, gross; nothing where no world has one.</summary>
    public ThreePoint SumOf(IEnumerable<string> costs)
    {
        var ids = costs.ToFrozenSet(StringComparer.Ordinal);
        return Range(Money([.. Worlds.Contents.Select((c, p) => Setting.Outlook.GrossOf(ids, c, Worlds.Draws[p]))]));
    }

    /// <summary>Quantiles of the VAT in it.</summary>
    public Quantiles<decimal> Vat => Money(Taxes);

    /// <summary>What one, five and nine of ten trials do not exceed of the household's own hours.</summary>
    public ThreePoint HouseholdHours => Quantiles.Of(Work.Zip(Worlds.Weights)) is var q ? ThreePoint.Of(q.P10, q.P50, q.P90)!.Map(h => h / Hundred) : ThreePoint.Zero;

    /// <summary>Quantiles of the finish, as day numbers.</summary>
    public Quantiles<int> Finish => _finish ??= Quantiles.OfDays(Dates.Finish, Worlds.Weights)!;

    /// <summary>Quantiles of a step's start and of its last day over the trials that have it; null where none has.</summary>
    public (Quantiles<int> Start, Quantiles<int> End)? Of(Step step) =>
        Place(step) is >= 0 and var s && Quantiles.OfDays(Dates.Starts[s], Worlds.Weights) is { } starts
            ? (starts, Quantiles.OfDays(Dates.Ends[s], Worlds.Weights)!)
            : null;

    /// <summary>What one, five and nine of ten trials do not exceed.</summary>
    public DateRange Range(Quantiles<int> days) => new(Horizon.Date(days.P10), Horizon.Date(days.P50), Horizon.Date(days.P90));

    /// <summary>The same for sums.</summary>
    public static ThreePoint Range(Quantiles<decimal> sums) => ThreePoint.Of(sums.P10, sums.P50, sums.P90)!;

    /// <summary>What a reader is told of them.</summary>
    public Chances Chances(ImmutableArray<Step> steps, LocalDate? neededBy) => new(
        Dates.Finish.Length,
        Worlds.EveryWorld,
        All(Gross, g => g),
        All(Finish, Horizon.Date),
        neededBy is { } day ? Share(Sum(p => Dates.Ready[p] <= Horizon.Day(day))) : null,
        steps.ToFrozenDictionary(s => s.Id, s => Share(Place(s) is >= 0 and var at ? Sum(p => Dates.Starts[at][p] != StepRun.Absent) : 0), StringComparer.Ordinal),
        steps.ToFrozenDictionary(s => s.Id, s => Share(Place(s) is >= 0 and var at ? Dates.Deciding[at] : 0), StringComparer.Ordinal))
    {
        FinishByTenths = [.. Quantiles.Tenths(Dates.Finish, Worlds.Weights).Distinct().Select(d => new FinishBy(Horizon.Date(d), Share(Sum(p => Dates.Finish[p] <= d))))],
    };

    /// <summary>The share of trials in which each event happens, in the order of the steps.</summary>
    public IEnumerable<(string Step, ChanceEvent Event, double Share)> Events =>
        Setting.Outlook.Events.Select((e, i) => (Setting.Pool.Steps[e.Step].Id, e.Event, Share(Sum(p => Worlds.Contents[p].Events[i] && e.Happens(Worlds.Draws[p])))));

    /// <summary>The share of trials in which all of those steps that the trial has are done by a day.</summary>
    public double ShareBy(IEnumerable<Step> steps, LocalDate day)
    {
        var (places, last) = (steps.Select(Place).Where(s => s >= 0).ToArray(), Horizon.Day(day));
        return Share(Sum(p => places.All(s => Dates.Ends[s][p] <= last)));
    }

    private int Place(Step step) => Setting.Pool.PlaceOf(step);

    private double Sum(Func<int, bool> counts)
    {
        var sum = 0d;
        for (var p = 0; p < Worlds.Weights.Length; p++)
        {
            sum += counts(p) ? Worlds.Weights[p] : 0;
        }

        return sum;
    }

    private Quantiles<decimal> Money(long[] pennies)
    {
        var q = Quantiles.Of(pennies.Zip(Worlds.Weights));
        return new(q.Lowest / Hundred, q.P10 / Hundred, q.P50 / Hundred, q.P80 / Hundred, q.P90 / Hundred, q.Highest / Hundred);
    }

    // Sums of many small weights, without the last digits that their order decides.
    private static double Share(double sum) => Math.Round(sum, 9);

    private static QuantileRange<TTo> All<TFrom, TTo>(Quantiles<TFrom> q, Func<TFrom, TTo> to)
        where TFrom : IComparable<TFrom> => new(to(q.Lowest), to(q.P10), to(q.P50), to(q.P80), to(q.P90), to(q.Highest));
}

/// <summary>How much is tried: trials of the chosen way and of each other way, and on how many threads at most (-1 for as many as there are).</summary>
internal sealed record Effort(int Many, int Few, int Threads)
{
    /// <summary>What a handbook takes.</summary>
    public static Effort Whole { get; } = new(TrialRun.Many, TrialRun.Few, -1);

    /// <summary>One trial of one world, where figures do not matter.</summary>
    public static Effort None { get; } = new(0, 0, 1);

    /// <summary>What a first look takes.</summary>
    public static Effort Sketch { get; } = new(TrialRun.Few / 5, TrialRun.Few / 50, -1) { Compares = false };

    /// <summary>Whether the other ways are planned too, and what each answer that is not known yet would change.</summary>
    public bool Compares { get; private init; } = true;
}

/// <summary>Everything that the trials of one way share.</summary>
internal sealed record TrialSetting(StepPool Pool, Outlook Outlook, WorldWalk Walk, WorldContents Contents, StepRunner Runner, ImmutableArray<Affected> Affected)
{
    /// <summary>The setting of a way: its steps whose party works at all, its lines in the nation's money, and the unknown questions that matter to them.</summary>
    public static TrialSetting Of(WayCase way, ImmutableArray<Planned<Step>> planned, PartyCalendars calendars, NeededFor needed, int trials)
    {
        var steps = planned.Where(s => s.IsPresent && calendars.Has(s.Item.Party)).ToImmutableArray();
        var costs = Items.Plan(way.Guidance.Costs, way.Lookup);
        var byChance = way.Guidance.ChanceCosts;
        var lines = costs.Where(c => c.IsPresent && !byChance.Contains(c.Item.Id) && CostPlanner.IsInOurMoney(c.Item, way) && CostPlanner.Counts(c, way)).ToImmutableArray();
        var events = steps.SelectMany(s => s.Item.MayHappen).Select(e => Judge.Of(e.AppliesIf, way.Lookup)).Select(j => new Because("", "", Place.None, j.Truth, j.Deciding, LocalText.Empty, []));
        var unknown = Unknowns.Of(way, planned.Select(s => s.Because).Concat(steps.SelectMany(s => WorkDays.Reasons(s.Item, way))).Concat(lines.Select(c => c.Because)).Concat(events), lines.Select(c => c.Item));
        var world = new DefiniteWorld(way.Facts, way.Rules, way.Guidance.Tables);
        var pool = new StepPool(steps, way, calendars, new(Deadlines.Start(way.Facts.Answers, way.Occasion.Today)));
        var outlook = new Outlook(way, pool.Steps, [.. lines.Select(l => l.Item)], trials);
        return new(pool, outlook, new(way, world, unknown), new(way, world, steps, lines), new(pool, outlook, needed), new Reach(way, unknown).Of(steps, lines));
    }
}
