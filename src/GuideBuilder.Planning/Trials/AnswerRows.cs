using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Planning.Trials;

/// <summary>What trials come to if a question has one answer (the place of a candidate, or none where it is not asked): the share of worlds that have it, and by trial the sum in pennies, the finish, the day on which there is what is needed, and its weight among those of this answer.</summary>
internal sealed record AnswerRow(int Answer, double Share, long[] Sums, int[] Finishes, int[] Ready, double[] Weights)
{
    private Quantiles<long>? _gross;
    private Quantiles<int>? _finish;

    /// <summary>Quantiles of the sum.</summary>
    public Quantiles<long> Gross => _gross ??= Quantiles.Of(Sums.Zip(Weights));

    /// <summary>Quantiles of the finish.</summary>
    public Quantiles<int> Finish => _finish ??= Quantiles.OfDays(Finishes, Weights)!;

    /// <summary>The share of its trials in which there is what is needed by a day.</summary>
    public double ShareBy(int day)
    {
        var (sum, all) = (0d, 0d);
        for (var i = 0; i < Weights.Length; i++)
        {
            all += Weights[i];
            sum += Ready[i] <= day ? Weights[i] : 0;
        }

        return sum / all;
    }
}

/// <summary>The rows of each unknown question of a way's trials.</summary>
internal static class AnswerRows
{
    // Of sampled worlds only the first are tried again with another answer.
    private const int TriedAgain = 1_000;

    /// <summary>By question, in the order of the walk: conditional mixtures of the trials where every world was looked at, else the first trials again with that answer forced. Rows that no world has are left out.</summary>
    public static ImmutableArray<ImmutableArray<AnswerRow>> Of(TrialRun run, int threads) =>
        run.Worlds.EveryWorld ? [.. Questions(run).Select(q => Mixtures(run, q))] : Forced(run, threads);

    private static IEnumerable<int> Questions(TrialRun run) => Enumerable.Range(0, run.Setting.Walk.Unknown.Length);

    private static ImmutableArray<AnswerRow> Mixtures(TrialRun run, int question)
    {
        var each = run.Worlds.Draws.Length / run.Worlds.Classes.Length;
        var answers = run.Setting.Walk.CandidatesOf(question).Length;
        double ShareOf(int answer) => run.Worlds.Classes.Sum(c => c.Shares[question][answer]);
        return
        [
            .. Enumerable.Range(0, answers + 1).Where(a => ShareOf(a) > 0).Select(a => new AnswerRow(
                a == answers ? WorldWalk.None : a,
                ShareOf(a),
                run.Sums,
                run.Dates.Finish,
                run.Dates.Ready,
                [.. run.Worlds.Classes.SelectMany(c => Enumerable.Repeat(c.Shares[question][a] / each, each))])),
        ];
    }

    private static ImmutableArray<ImmutableArray<AnswerRow>> Forced(TrialRun run, int threads)
    {
        var again = new Retrial(run, Math.Min(TriedAgain, run.Worlds.Draws.Length));
        var tried = Questions(run).Select(q => again.Of(q)).ToArray();
        again.Run(threads);
        return [.. tried.Select(rows => rows.Select(r => r.Row(again)).ToImmutableArray())];
    }
}

/// <summary>The first sampled trials, tried again with one answer and another; what comes to the same is run once.</summary>
internal sealed class Retrial(TrialRun run, int trials)
{
    private readonly int[][] _taken = run.Worlds.Taken[..trials];
    private readonly Dictionary<(string StepKey, int Trial), int> _places = [];
    private readonly List<(WorldContent Content, int Trial)> _runs = [];
    private (int[] Finish, int[] Ready) _found = ([], []);

    /// <summary>The rows of a question, to be told once all have been run.</summary>
    public List<Pending> Of(int question)
    {
        var rows = new List<Pending>();
        var affected = run.Setting.Affected[question];
        var candidates = run.Setting.Walk.CandidatesOf(question);
        for (var answer = 0; answer < candidates.Length; answer++)
        {
            var row = new Pending(answer, (double)run.Worlds.Taken.Count(t => t[question] == answer) / run.Worlds.Taken.Length);
            run.Setting.Walk.Force(_taken, question, answer, affected.Questions, trial => Add(row, trial, affected));
            rows.Add(row);
        }

        var unasked = new Pending(WorldWalk.None, (double)run.Worlds.Taken.Count(t => t[question] == WorldWalk.None) / run.Worlds.Taken.Length);
        foreach (var trial in Enumerable.Range(0, trials).Where(t => _taken[t][question] == WorldWalk.None))
        {
            unasked.Trials.Add((run.Sums[trial], -1 - trial));
        }

        return [.. rows.Append(unasked).Where(r => r.Trials.Count > 0 && r.Share > 0)];
    }

    /// <summary>Runs what has not been run yet.</summary>
    public void Run(int threads) => _found = run.Setting.Runner.Finishes([.. _runs.Select(r => r.Content)], [.. _runs.Select(r => r.Trial)], threads);

    private void Add(Pending row, int trial, Affected affected)
    {
        var other = run.Worlds.Contents[trial];
        var content = run.Setting.Contents.Read(other, affected);
        row.Trials.Add((
            ReferenceEquals(content, other) ? run.Sums[trial] : run.Setting.Outlook.GrossOf(content, trial, other, run.Sums[trial], affected),
            content.StepKey == other.StepKey ? -1 - trial : PlaceOf(content, trial)));
    }

    private int PlaceOf(WorldContent content, int trial)
    {
        if (!_places.TryGetValue((content.StepKey, trial), out var place))
        {
            _places[(content.StepKey, trial)] = place = _runs.Count;
            _runs.Add((content, trial));
        }

        return place;
    }

    /// <summary>A row whose finishes are still to come: by trial its sum, and the place of its run, or below nothing that of the trial whose finish it has.</summary>
    internal sealed record Pending(int Answer, double Share)
    {
        public List<(long Sum, int Place)> Trials { get; } = [];

        public AnswerRow Row(Retrial again) => new(
            Answer,
            Share,
            [.. Trials.Select(t => t.Sum)],
            [.. Trials.Select(t => t.Place < 0 ? again.First.Finish[-1 - t.Place] : again._found.Finish[t.Place])],
            [.. Trials.Select(t => t.Place < 0 ? again.First.Ready[-1 - t.Place] : again._found.Ready[t.Place])],
            [.. Trials.Select(_ => 1d / Trials.Count)]);
    }

    private StepRun First => run.Dates;
}
