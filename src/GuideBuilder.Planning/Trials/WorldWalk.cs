using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Trials;

/// <summary>Goes through the worlds of a way, all of them or a sample, one at a time in the same object.</summary>
internal sealed class WorldWalk
{
    /// <summary>The place of an answer that a world does not ask for, or that stays blank.</summary>
    public const int None = -1;

    private readonly WayCase _way;
    private readonly DefiniteWorld _world;
    private readonly ImmutableArray<Question> _unknown;
    private readonly int[] _slots;
    private readonly WorldTest[] _asked;
    private readonly (WorldTest When, ImmutableArray<Candidate> Candidates)[][] _candidates;
    private readonly Value[][] _values;
    private uint[][] _draws = [];

    /// <summary>A walk over the worlds of those unknown questions.</summary>
    public WorldWalk(WayCase way, DefiniteWorld world, ImmutableArray<Question> unknown)
    {
        (_way, _world, _unknown) = (way, world, unknown);
        _slots = [.. unknown.Select(q => world.SlotOf(q.Name))];
        _asked = [.. unknown.Select(q => world.TestOf(q.AskIf))];
        _candidates = [.. unknown.Select(q => q.WeightsIf.Select(w => (world.TestOf(w.When), Candidates.Of(q, c => ReferenceEquals(c, w.When)))).Append((WorldTest.Always, Candidates.Of(q, _ => false))).ToArray())];
        _values = [.. _candidates.Select(c => c[^1].Candidates.Select(v => v.Value).ToArray())];
    }

    /// <summary>The questions, in written order.</summary>
    public ImmutableArray<Question> Unknown => _unknown;

    /// <summary>What each question may turn out to be, in written order.</summary>
    public ImmutableArray<Candidate> CandidatesOf(int question) => _candidates[question][^1].Candidates;

    /// <summary>Shows every world with its share and the place of what it takes for each question (none where it is not asked), in order, until the visitor has seen enough; whether it has seen all.</summary>
    public bool All(Func<double, int[], bool> visit) => From(0, new int[_unknown.Length], 1, visit);

    /// <summary>Goes to a sampled world for each trial, and shows what it takes for each question.</summary>
    public void Sample(int trials, Action<int, int[]> visit)
    {
        _draws = [.. _unknown.Select(q => DrawsOf(q, trials))];
        for (var trial = 0; trial < trials; trial++)
        {
            var taken = new int[_unknown.Length];
            _world.Clear();
            for (var i = 0; i < taken.Length; i++)
            {
                Take(i, taken[i] = Drawn(CandidatesAt(i), _draws[i][trial]));
            }

            visit(trial, taken);
        }
    }

    /// <summary>Goes to the world that takes this for each question.</summary>
    public void GoTo(int[] taken)
    {
        _world.Clear();
        for (var i = 0; i < taken.Length; i++)
        {
            Take(i, taken[i]);
        }
    }

    /// <summary>In the world of a sampled trial forces one answer, the others as that answer leaves them. Later are the questions whose being asked or whose weights may depend on it.</summary>
    public void Force(int trial, int question, int answer, ImmutableArray<int> later)
    {
        _world.Forget();
        Take(question, answer);
        foreach (var i in later)
        {
            Take(i, Drawn(CandidatesAt(i), _draws[i][trial]));
        }
    }

    /// <summary>Goes back to what the trial had taken.</summary>
    public void Release(int[] taken, int question, ImmutableArray<int> later)
    {
        _world.Forget();
        Take(question, taken[question]);
        foreach (var i in later)
        {
            Take(i, taken[i]);
        }
    }

    private uint[] DrawsOf(Question question, int trials) => CommonDraws.Of(_way.Guidance).Of(_way.Occasion.Seed, question.Name, "answer", trials);

    private void Take(int i, int answer) => _world.Take(_slots[i], answer == None ? null : _values[i][answer]);

    // What a world has taken is told again from the start, because what follows may have been told otherwise.
    private bool From(int at, int[] taken, double share, Func<double, int[], bool> visit)
    {
        _world.Clear();
        for (var i = 0; i < at; i++)
        {
            Take(i, taken[i]);
        }

        if (at == taken.Length)
        {
            return visit(share, taken);
        }

        var candidates = CandidatesAt(at);
        for (var c = candidates.IsEmpty ? None : 0; c < candidates.Length; c++)
        {
            taken[at] = c;
            if ((c == None || candidates[c].Share > 0) && !From(at + 1, taken, c == None ? share : share * candidates[c].Share, visit))
            {
                return false;
            }
        }

        return true;
    }

    // Empty where this world does not ask the question, or where its answer stays blank.
    private ImmutableArray<Candidate> CandidatesAt(int i)
    {
        if (!_asked[i].Holds(_world))
        {
            return [];
        }

        var at = 0;
        while (!_candidates[i][at].When.Holds(_world))
        {
            at++;
        }

        return _candidates[i][at].Candidates;
    }

    private static int Drawn(ImmutableArray<Candidate> candidates, uint draw)
    {
        var below = 0d;
        for (var i = 0; i < candidates.Length - 1; i++)
        {
            below += candidates[i].Share;
            if (Draws.Happens(draw, below))
            {
                return i;
            }
        }

        return candidates.Length - 1;
    }
}
