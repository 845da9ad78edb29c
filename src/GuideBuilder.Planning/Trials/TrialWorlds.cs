using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Trials;

/// <summary>What several trials have in common, and which trials (points) they are.</summary>
internal sealed record Sharing<T>(T What, ImmutableArray<int> Points);

/// <summary>
/// The trials of one way and the world of each: by point the number of its draws and its weight among all, whether every world was looked at,
/// and the points with the same steps and those with the same lines of money.
/// </summary>
internal sealed record TrialWorlds(
    ImmutableArray<int> Draws,
    ImmutableArray<double> Weights,
    bool EveryWorld,
    ImmutableArray<Sharing<ImmutableArray<Step>>> StepSets,
    ImmutableArray<Sharing<ImmutableArray<(Cost Cost, decimal Quantity)>>> LineSets)
{
    private const int MostClasses = 64;
    private const int MostWorlds = 2_048;
    private const int LeastTrials = 200;

    // To make a network takes longer than to run it, so a sampled world is tried with several draws.
    private const int TriesOfAWorld = 4;

    /// <summary>The worlds for about so many trials: all of them where they fall into few classes, else sampled ones.</summary>
    public static TrialWorlds Of(WayCase way, ImmutableArray<Planned<Step>> steps, int trials)
    {
        var costs = Items.Plan(way.Guidance.Costs, way.Lookup);
        var reasons = steps.Select(s => s.Because).Concat(costs.Select(c => c.Because));
        var unknown = Unknowns.Of(way, reasons, costs.Where(c => c.IsPresent).Select(c => c.Item));
        var contents = new WorldContents(way, steps, costs);
        var walk = new WorldWalk(way, unknown);
        return Enumerated(walk, contents, trials) ?? Sampled(walk, contents, trials);
    }

    // Null where there are too many worlds or classes.
    private static TrialWorlds? Enumerated(WorldWalk walk, WorldContents contents, int trials)
    {
        var classes = new SortedDictionary<string, (double Share, WorldContent Content)>(StringComparer.Ordinal);
        var worlds = 0;
        var few = walk.All((world, share) =>
        {
            var content = contents.Of(world);
            var key = content.StepKey + content.LineKey;
            classes[key] = classes.TryGetValue(key, out var seen) ? (seen.Share + share, seen.Content) : (share, content);
            return ++worlds <= MostWorlds && classes.Count <= MostClasses;
        });
        var each = Math.Max(LeastTrials, trials / Math.Max(1, classes.Count));
        return few
            ? Of([.. classes.Values.SelectMany(c => Enumerable.Range(0, each).Select(t => (c.Content, t, c.Share / each)))], true)
            : null;
    }

    private static TrialWorlds Sampled(WorldWalk walk, WorldContents contents, int trials)
    {
        var sampled = walk.Sample(trials / TriesOfAWorld).Select(contents.Of).ToArray();
        return Of([.. Enumerable.Range(0, sampled.Length * TriesOfAWorld).Select(t => (sampled[t / TriesOfAWorld], t, 1d / (sampled.Length * TriesOfAWorld)))], false);
    }

    private static TrialWorlds Of((WorldContent Content, int Draw, double Weight)[] points, bool everyWorld) => new(
        [.. points.Select(p => p.Draw)],
        [.. points.Select(p => p.Weight)],
        everyWorld,
        Shared(points, c => c.StepKey, c => c.Steps()),
        Shared(points, c => c.LineKey, c => c.Lines()));

    private static ImmutableArray<Sharing<T>> Shared<T>((WorldContent Content, int Draw, double Weight)[] points, Func<WorldContent, string> key, Func<WorldContent, T> what) =>
        [.. points.Select((p, i) => (p.Content, i)).GroupBy(p => key(p.Content), p => p, StringComparer.Ordinal).Select(g => new Sharing<T>(what(g.First().Content), [.. g.Select(p => p.i)]))];
}
