using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>Sorts the worlds of a way into classes: all worlds where there are few, else as many sampled ones as there are trials.</summary>
internal sealed class WorldClasses
{
    private const int MostClasses = 64;
    private const int MostWorlds = 256;
    private const int LeastTrials = 200;

    private readonly WayCase _way;
    private readonly ImmutableArray<Question> _unknown;
    private readonly WorldContents _contents;
    private readonly DefiniteWorld _world;

    private WorldClasses(WayCase way, ImmutableArray<Question> unknown, WorldContents contents) =>
        (_way, _unknown, _contents, _world) = (way, unknown, contents, new(way.Facts, way.Rules, way.Guidance.Tables));

    /// <summary>The classes for about so many trials.</summary>
    public static ImmutableArray<WorldClass> Of(WayCase way, ImmutableArray<Planned<Step>> steps, int trials)
    {
        var costs = Items.Plan(way.Guidance.Costs, way.Lookup);
        var reasons = steps.Select(s => s.Because).Concat(costs.Select(c => c.Because));
        var unknown = Unknowns.Of(way, reasons, costs.Where(c => c.IsPresent).Select(c => c.Item));
        var run = new WorldClasses(way, unknown, new(way, steps, costs));
        return run.Enumerated(trials) ?? run.Sampled(trials);
    }

    // Null where there are too many worlds or classes.
    private ImmutableArray<WorldClass>? Enumerated(int trials)
    {
        var shares = new Dictionary<string, (double Share, WorldClass Class)>(StringComparer.Ordinal);
        var worlds = 0;
        var few = Walk(0, [], 1, share =>
        {
            var key = _contents.KeyOf(_world);
            shares[key] = shares.TryGetValue(key, out var seen) ? (seen.Share + share, seen.Class) : (share, _contents.ClassOf(_world));
            return ++worlds <= MostWorlds && shares.Count <= MostClasses;
        });
        var each = Math.Max(LeastTrials, trials / Math.Max(1, shares.Count));
        return few
            ? [.. shares.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => s.Value.Class with { Trials = [.. Enumerable.Range(0, each)], Share = s.Value.Share, EveryWorld = true })]
            : null;
    }

    // What a world takes is told again from the start for every world, because later answers may not be asked.
    private bool Walk(int at, List<Value?> taken, double share, Func<double, bool> visit)
    {
        _world.Clear();
        for (var i = 0; i < taken.Count; i++)
        {
            _world.Take(_unknown[i].Name, taken[i]);
        }

        if (at == _unknown.Length)
        {
            return visit(share);
        }

        var candidates = Unknowns.In(_world, _unknown[at]);
        return candidates.IsEmpty
            ? Walk(at + 1, [.. taken, null], share, visit)
            : candidates.Where(c => c.Share > 0).All(c => Walk(at + 1, [.. taken, c.Value], share * c.Share, visit));
    }

    private ImmutableArray<WorldClass> Sampled(int trials)
    {
        var draws = _unknown.Select(q => Draws.Of(_way.Occasion.Seed, q.Name, "answer", trials)).ToArray();
        var classes = new Dictionary<string, (WorldClass Class, List<int> Trials)>(StringComparer.Ordinal);
        for (var trial = 0; trial < trials; trial++)
        {
            _world.Clear();
            for (var i = 0; i < _unknown.Length; i++)
            {
                _world.Take(_unknown[i].Name, Drawn(Unknowns.In(_world, _unknown[i]), draws[i][trial]));
            }

            var key = _contents.KeyOf(_world);
            if (!classes.TryGetValue(key, out var found))
            {
                classes[key] = found = (_contents.ClassOf(_world), []);
            }

            found.Trials.Add(trial);
        }

        return [.. classes.OrderBy(c => c.Value.Trials[0]).Select(c => c.Value.Class with { Trials = [.. c.Value.Trials], Share = (double)c.Value.Trials.Count / trials })];
    }

    private static Value? Drawn(ImmutableArray<Candidate> candidates, uint draw)
    {
        var below = 0d;
        foreach (var candidate in candidates)
        {
            below += candidate.Share;
            if (Draws.Happens(draw, below))
            {
                return candidate.Value;
            }
        }

        return candidates.IsEmpty ? null : candidates[^1].Value;
    }
}
