using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>Goes through the worlds of a way, all of them or a sample, one at a time in the same object.</summary>
internal sealed class WorldWalk(WayCase way, ImmutableArray<Question> unknown)
{
    private readonly DefiniteWorld _world = new(way.Facts, way.Rules, way.Guidance.Tables);
    private readonly ImmutableArray<Candidate>[] _fixed = [.. unknown.Select(q => q.WeightsIf.IsEmpty ? Candidates.Of(q, _ => false) : default)];

    /// <summary>Shows every world with its share, in order, until the visitor has seen enough; whether it has seen all.</summary>
    public bool All(Func<DefiniteWorld, double, bool> visit) => From(0, new Value?[unknown.Length], 1, visit);

    /// <summary>A sampled world for each trial.</summary>
    public IEnumerable<DefiniteWorld> Sample(int trials)
    {
        var draws = unknown.Select(q => Draws.Of(way.Occasion.Seed, q.Name, "answer", trials)).ToArray();
        for (var trial = 0; trial < trials; trial++)
        {
            _world.Clear();
            for (var i = 0; i < unknown.Length; i++)
            {
                _world.Take(unknown[i].Name, Drawn(CandidatesAt(i), draws[i][trial]));
            }

            yield return _world;
        }
    }

    // What a world has taken is told again from the start, because what follows may have been told otherwise.
    private bool From(int at, Value?[] taken, double share, Func<DefiniteWorld, double, bool> visit)
    {
        _world.Clear();
        for (var i = 0; i < at; i++)
        {
            _world.Take(unknown[i].Name, taken[i]);
        }

        if (at == unknown.Length)
        {
            return visit(_world, share);
        }

        foreach (var candidate in CandidatesAt(at) is { IsEmpty: false } some ? some.Where(c => c.Share > 0) : [new(null!, 1, true)])
        {
            taken[at] = candidate.Value;
            if (!From(at + 1, taken, share * candidate.Share, visit))
            {
                return false;
            }
        }

        return true;
    }

    // Empty where this world does not ask the question, or where its answer stays blank.
    private ImmutableArray<Candidate> CandidatesAt(int i) =>
        !_world.Holds(unknown[i].AskIf) ? [] : _fixed[i].IsDefault ? Candidates.Of(unknown[i], _world.Holds) : _fixed[i];

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
