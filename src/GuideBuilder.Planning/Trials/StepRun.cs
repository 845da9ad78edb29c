using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Trials;

/// <summary>What trials came to, as day numbers: by step, then point, its start and its last day (Absent where the world does not have it), by point the day on which the power is on, and that on which there is what the needed-by date asks for; and how much weight each step has in the chain that decides the finish. A trial without dates has the horizon's last day everywhere.</summary>
internal sealed record StepRun(int[][] Starts, int[][] Ends, int[] Finish, int[] Ready, double[] Deciding)
{
    /// <summary>The day of a step that is not there.</summary>
    public const int Absent = int.MinValue;
}

/// <summary>Runs trials: the loop works on arrays of day numbers, not on the rules.</summary>
internal sealed class StepRunner(StepPool pool, Outlook outlook, NeededFor needed)
{
    // Blocks are the same whatever the number of threads, so that sums are added in one order.
    private const int Blocks = 64;
    private readonly DayTable[] _tables = [.. outlook.Events.Select(e => pool.TableOf(e))];
    private readonly int[] _frees = [.. Enumerable.Range(0, pool.Steps.Length).Where(s => pool.Steps[s] is { FreesPlace: true, Meeting: null })];
    private readonly int[] _meeting = [.. Enumerable.Range(0, pool.Steps.Length).Where(s => pool.Steps[s].Meeting is not null)];

    /// <summary>Runs each point with its world and its draws, on at most so many threads (-1 for as many as there are).</summary>
    public StepRun Run(WorldContent[] contents, int[] draws, double[] weights, int threads)
    {
        var groups = Enumerable.Range(0, contents.Length).GroupBy(p => contents[p].StepKey, StringComparer.Ordinal).Select(g => g.ToArray()).ToArray();
        var run = new StepRun(Table(pool.Steps.Length, contents.Length), Table(pool.Steps.Length, contents.Length), new int[contents.Length], new int[contents.Length], new double[pool.Steps.Length]);
        var deciding = new double[Blocks][];
        Parallel.For(0, Blocks, new() { MaxDegreeOfParallelism = threads }, b =>
        {
            var work = new Work(pool, outlook.Events.Length);
            foreach (var group in groups.AsSpan((groups.Length * b / Blocks)..(groups.Length * (b + 1) / Blocks)))
            {
                RunGroup(group, contents, draws, weights, run, work);
            }

            deciding[b] = work.Deciding;
        });
        foreach (var block in deciding)
        {
            for (var s = 0; s < block.Length; s++)
            {
                run.Deciding[s] += block[s];
            }
        }

        return run;
    }

    /// <summary>The day on which the power is on in each of those trials, and that on which there is what is needed.</summary>
    public (int[] Finish, int[] Ready) Finishes(WorldContent[] contents, int[] draws, int threads)
    {
        var groups = Enumerable.Range(0, contents.Length).GroupBy(p => contents[p].StepKey, StringComparer.Ordinal).Select(g => g.ToArray()).ToArray();
        var (finishes, ready) = (new int[contents.Length], new int[contents.Length]);
        Parallel.For(0, Blocks, new() { MaxDegreeOfParallelism = threads }, b =>
        {
            var work = new Work(pool, outlook.Events.Length);
            foreach (var group in groups.AsSpan((groups.Length * b / Blocks)..(groups.Length * (b + 1) / Blocks)))
            {
                var (goal, wanted) = (GoalOf(contents[group[0]].Steps, NeededFor.PowerOn), GoalOf(contents[group[0]].Steps, needed));
                work.Take(pool.Of(contents[group[0]].Steps), contents[group[0]].Steps, outlook.DurationsIn(contents[group[0]]));
                foreach (var point in group)
                {
                    var found = RunOne(contents[point], draws[point], work);
                    finishes[point] = FinishOf(goal, work, found);
                    ready[point] = needed == NeededFor.PowerOn ? finishes[point] : FinishOf(wanted, work, found);
                }
            }
        });
        return (finishes, ready);
    }

    private void RunGroup(int[] points, WorldContent[] contents, int[] draws, double[] weights, StepRun run, Work work)
    {
        work.Take(pool.Of(contents[points[0]].Steps), contents[points[0]].Steps, outlook.DurationsIn(contents[points[0]]));
        var (goal, wanted) = (GoalOf(contents[points[0]].Steps, NeededFor.PowerOn), GoalOf(contents[points[0]].Steps, needed));
        foreach (var point in points)
        {
            var found = RunOne(contents[point], draws[point], work);
            Keep(work, run, contents[point].Steps, point, found, pool.Horizon.LastDay);
            run.Finish[point] = FinishOf(goal, work, found);
            run.Ready[point] = needed == NeededFor.PowerOn ? run.Finish[point] : FinishOf(wanted, work, found);
            if (found)
            {
                CountChain(Last(goal, work), work, weights[point]);
            }
        }
    }

    private bool RunOne(WorldContent content, int trial, Work work)
    {
        FillDays(content, trial, work);
        return work.Pass.Run(work.Days)
            && (FillMishaps(content, trial, work.Mishaps) is not (> 0 and var mishaps) || Setback.Apply(work.Pass, work.Mishaps.AsSpan(0, mishaps), work.Days));
    }

    private int FinishOf(int[] goal, Work work, bool found) =>
        goal.Length == 0 ? pool.Horizon.StartDay : found ? work.End(Last(goal, work)) : pool.Horizon.LastDay;

    private static void FillDays(WorldContent content, int trial, Work work)
    {
        for (var s = 0; s < work.Days.Length; s++)
        {
            if (content.Steps[s])
            {
                work.Days[s] = work.Durations[s].Days(trial);
            }
        }
    }

    private int FillMishaps(WorldContent content, int trial, Mishap[] mishaps)
    {
        var count = 0;
        for (var e = 0; e < mishaps.Length; e++)
        {
            if (content.Events[e] && outlook.Events[e] is { More: { } more } happening && happening.Happens(trial))
            {
                mishaps[count++] = new(happening.Step, more.Days(trial), _tables[e]);
            }
        }

        return count;
    }

    // As in Deadlines: the steps of meetings, or all where nobody meets.
    private int[] GoalOf(bool[] present, NeededFor what)
    {
        var meet = Array.FindAll(_meeting, s => present[s]);
        return meet.Length == 0 ? [.. Enumerable.Range(0, present.Length).Where(s => present[s])]
            : what == NeededFor.PowerOn ? meet
            : [.. meet, .. Array.FindAll(_frees, s => present[s])];
    }

    private static void Keep(Work work, StepRun run, bool[] present, int point, bool found, int end)
    {
        for (var s = 0; s < present.Length; s++)
        {
            run.Starts[s][point] = !present[s] ? StepRun.Absent : found ? work.Pass.Starts[s] : end;
            run.Ends[s][point] = !present[s] ? StepRun.Absent : found ? work.End(s) : end;
        }
    }

    private static int Last(int[] goal, Work work)
    {
        var last = -1;
        foreach (var s in goal)
        {
            last = last < 0 || work.End(s) > work.End(last) ? s : last;
        }

        return last;
    }

    private static void CountChain(int last, Work work, double weight)
    {
        for (var (at, steps) = (last, 0); at >= 0 && steps < work.Days.Length; steps++)
        {
            work.Deciding[at] += weight;
            at = work.Pass.LeadOf(at);
        }
    }

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];

    private sealed class Work(StepPool pool, int events)
    {
        public int[] Days { get; } = new int[pool.Steps.Length];

        public double[] Deciding { get; } = new double[pool.Steps.Length];

        public Mishap[] Mishaps { get; } = new Mishap[events];

        public PartPass Pass { get; private set; } = null!;

        public DrawnDuration[] Durations { get; private set; } = [];

        public void Take(PartNetwork parts, bool[] present, DrawnDuration[] durations)
        {
            Durations = durations;
            Pass ??= new(parts);
            Pass.Take(parts, present);
        }

        public int End(int step) => Math.Max(Pass.Starts[step], Pass.Finishes[step] - 1);
    }
}
