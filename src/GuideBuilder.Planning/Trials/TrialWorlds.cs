
namespace GuideBuilder.Planning.Trials;

/// <summary>Worlds that make the same of a way: their share among all, and for each unknown question their shares by answer (the last: not asked).</summary>
internal sealed record WorldClass(WorldContent Content, double[][] Shares)
{
    /// <summary>The share of all its worlds.</summary>
    public double Share { get; set; }
}

/// <summary>
/// The trials of one way and the world of each: by point what the world makes of the way, the number of its draws and its weight among all.
/// Where every world was looked at, the classes in the order of their points; else none, and what each sampled world takes.
/// </summary>
internal sealed record TrialWorlds(WorldContent[] Contents, int[] Draws, double[] Weights, ImmutableArray<WorldClass> Classes, int[][] Taken)
{
    private const int MostClasses = 64;
    private const int MostWorlds = 2_048;

    /// <summary>The fewest trials of a world where every world is tried.</summary>
    public const int LeastTrials = 200;

    /// <summary>Whether every world was looked at.</summary>
    public bool EveryWorld => !Classes.IsEmpty;

    /// <summary>The worlds for about so many trials: all of them where they fall into few classes, else sampled ones; for none, a single one.</summary>
    public static TrialWorlds Of(WorldWalk walk, WorldContents contents, int trials) => trials == 0 ? Sampled(walk, contents, 1) : Enumerated(walk, contents, trials) ?? Sampled(walk, contents, trials);

    // Null where there are too many worlds or classes.
    private static TrialWorlds? Enumerated(WorldWalk walk, WorldContents contents, int trials)
    {
        var classes = new SortedDictionary<string, WorldClass>(StringComparer.Ordinal);
        var worlds = 0;
        var few = walk.All((share, taken) =>
        {
            var content = contents.Read();
            var key = content.StepKey + content.LineKey + content.WorkKey;
            if (!classes.TryGetValue(key, out var seen))
            {
                classes[key] = seen = new(content, [.. Enumerable.Range(0, taken.Length).Select(q => new double[walk.CandidatesOf(q).Length + 1])]);
            }

            Count(seen, taken, share);
            return ++worlds <= MostWorlds && classes.Count <= MostClasses;
        });
        return few ? Of([.. classes.Values], Math.Max(LeastTrials, trials / Math.Max(1, classes.Count))) : null;
    }

    private static void Count(WorldClass seen, int[] taken, double share)
    {
        seen.Share += share;
        for (var q = 0; q < taken.Length; q++)
        {
            seen.Shares[q][taken[q] == WorldWalk.None ? ^1 : taken[q]] += share;
        }
    }

    private static TrialWorlds Of(ImmutableArray<WorldClass> classes, int each)
    {
        var points = classes.SelectMany(c => Enumerable.Range(0, each).Select(t => (c.Content, t, Weight: c.Share / each))).ToArray();
        return new([.. points.Select(p => p.Content)], [.. points.Select(p => p.t)], [.. points.Select(p => p.Weight)], classes, []);
    }

    private static TrialWorlds Sampled(WorldWalk walk, WorldContents contents, int trials)
    {
        var (found, taken, weights) = (new WorldContent[trials], new int[trials][], new double[trials]);
        walk.Sample(trials, (trial, takes) => (found[trial], taken[trial]) = (contents.Read(), takes));
        Array.Fill(weights, 1d / trials);
        return new(found, [.. Enumerable.Range(0, trials)], weights, [], taken);
    }
}
