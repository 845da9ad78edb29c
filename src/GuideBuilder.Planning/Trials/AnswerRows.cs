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
        again.Run(threads);
        return [.. Questions(run).Select(again.Rows)];
    }
}

/// <summary>The first sampled trials, tried again with one answer and another; what comes to the same is run once.</summary>
internal sealed class Retrial
{
    private readonly TrialRun _run;
    private readonly Pending[][] _rows;
    private readonly Dictionary<(bool[] Steps, int Trial), int> _places = [];
    private readonly List<(WorldContent Content, int Trial)> _runs = [];
    private (int[] Finish, int[] Ready) _found = ([], []);

    /// <summary>Finds what there is to be run again.</summary>
    public Retrial(TrialRun run, int trials)
    {
        _run = run;
        _rows = [.. run.Setting.Walk.Unknown.Select((_, q) => PendingOf(q))];
        for (var trial = 0; trial < trials; trial++)
        {
            TryAgain(trial);
        }
    }

    /// <summary>Runs what has not been run yet.</summary>
    public void Run(int threads) => _found = _run.Setting.Runner.Finishes([.. _runs.Select(r => r.Content)], [.. _runs.Select(r => r.Trial)], threads);

    /// <summary>The rows of a question, once all have been run; those that no world has are left out.</summary>
    public ImmutableArray<AnswerRow> Rows(int question) => [.. _rows[question].Where(r => r.Trials.Count > 0 && r.Share > 0).Select(r => r.Row(this))];

    // A row for each answer, and the last for not being asked.
    private Pending[] PendingOf(int question)
    {
        var counts = new int[_run.Setting.Walk.CandidatesOf(question).Length + 1];
        foreach (var taken in _run.Worlds.Taken)
        {
            counts[taken[question] == WorldWalk.None ? ^1 : taken[question]]++;
        }

        return [.. counts.Select((count, a) => new Pending(a == counts.Length - 1 ? WorldWalk.None : a, (double)count / _run.Worlds.Taken.Length))];
    }

    private void TryAgain(int trial)
    {
        var taken = _run.Worlds.Taken[trial];
        _run.Setting.Walk.GoTo(taken);
        for (var question = 0; question < taken.Length; question++)
        {
            var rows = _rows[question];
            if (taken[question] == WorldWalk.None)
            {
                rows[^1].Trials.Add(Same(trial));
                continue;
            }

            for (var answer = 0; answer < rows.Length - 1; answer++)
            {
                rows[answer].Trials.Add(answer == taken[question] ? Same(trial) : Otherwise(trial, taken, question, answer));
            }
        }
    }

    private (long Sum, int Place) Same(int trial) => (_run.Sums[trial], -1 - trial);

    private (long Sum, int Place) Otherwise(int trial, int[] taken, int question, int answer)
    {
        var (setting, other) = (_run.Setting, _run.Worlds.Contents[trial]);
        var affected = setting.Affected[question];
        if (affected.IsNothing)
        {
            return Same(trial);
        }

        setting.Walk.Force(trial, question, answer, affected.Questions);
        var content = setting.Contents.Read(other, affected);
        setting.Walk.Release(taken, question, affected.Questions);
        return (
            ReferenceEquals(content, other) ? _run.Sums[trial] : setting.Outlook.GrossOf(content, trial, other, _run.Sums[trial], affected),
            ReferenceEquals(content.Steps, other.Steps) ? -1 - trial : PlaceOf(content, trial));
    }

    // Steps are one array wherever they and their events are the same.
    private int PlaceOf(WorldContent content, int trial)
    {
        if (!_places.TryGetValue((content.Steps, trial), out var place))
        {
            _places[(content.Steps, trial)] = place = _runs.Count;
            _runs.Add((content, trial));
        }

        return place;
    }

    private StepRun First => _run.Dates;

    /// <summary>A row whose finishes are still to come: by trial its sum, and the place of its run, or below nothing that of the trial whose finish it has.</summary>
    private sealed record Pending(int Answer, double Share)
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
}
