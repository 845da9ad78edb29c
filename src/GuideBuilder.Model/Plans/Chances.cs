namespace GuideBuilder.Model;

/// <summary>
/// What many trials of the chosen way came to, each a world, drawn durations and drawn sums: how many trials, whether every world was looked at or as many were sampled, the quantiles of cost (gross) and finish,
/// the share of trials that meet the needed-by date (null without one), the share in which each step is in the plan, and the share in which each step stands in the chain that decides the finish.
/// A day beyond the horizon of three years counts as its last day.
/// </summary>
public sealed record Chances(
    int Trials,
    bool EveryWorld,
    QuantileRange<decimal> Cost,
    QuantileRange<LocalDate> Finish,
    double? MeetsDate,
    FrozenDictionary<string, double> StepShares,
    FrozenDictionary<string, double> Deciding)
{
    /// <summary>The first day by which the goal is reached in at least one, two … nine in ten trials and in all, each day once, with the share that does reach it by then.</summary>
    public ImmutableArray<FinishBy> FinishByTenths { get; init; } = [];
}

/// <summary>A day, and the share of trials that reach the goal by then.</summary>
public sealed record FinishBy(LocalDate Day, double Share);

/// <summary>A range in figures: the lowest and highest of all trials, and what one, five, eight and nine in ten do not exceed.</summary>
public sealed record QuantileRange<T>(T Lowest, T P10, T P50, T P80, T P90, T Highest);
