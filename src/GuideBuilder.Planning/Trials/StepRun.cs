using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Trials;

/// <summary>What trials came to, as day numbers: by step, then point, its start and its last day (Absent where the world does not have it), by point the day on which the goal is reached; and how much weight each step has in the chain that decides the finish. A trial without dates has the horizon's last day everywhere.</summary>
internal sealed record StepRun(int[][] Starts, int[][] Ends, int[] Finish, double[] Deciding)
{
    /// <summary>The day of a step that is not there.</summary>
    public const int Absent = int.MinValue;
}

/// <summary>Runs trials: the loop works on arrays of day numbers, not on the rules.</summary>
internal sealed class StepRunner(StepPool pool, Outlook outlook)
{
    // Blocks are the same whatever the number of threads, so that sums are added in one order.
    private const int Blocks = 64;
    private readonly int[] _meeting = [.. Enumerable.Range(0, pool.Steps.Length).Where(s => pool.Steps[s].Meeting is not null)];

    /// <summary>Runs each point with its world and its draws, on at most so many threads (-1 for as many as there are).</summary>
    public StepRun Run(WorldContent[] contents, int[] draws, double[] weights, int threads)
    {
        var groups = Enumerable.Range(0, contents.Length).GroupBy(p => contents[p].StepKey, StringComparer.Ordinal).Select(g => g.ToArray()).ToArray();
        var run = new StepRun(Table(pool.Steps.Length, contents.Length), Table(pool.Steps.Length, contents.Length), new int[contents.Length], new double[pool.Steps.Length]);
        var deciding = new double[Blocks][];
        Parallel.For(0, Blocks, new() { MaxDegreeOfParallelism = threads }, b =>
        {
            var work = new Work(pool.Steps.Length, run);
            foreach (var group in groups.AsSpan((groups.Length * b / Blocks)..(groups.Length * (b + 1) / Blocks)))
            {
                RunGroup(group, contents, draws, weights, work);
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

    private void RunGroup(int[] points, WorldContent[] contents, int[] draws, double[] weights, Work work)
    {
        var net = pool.Of(contents[points[0]].Steps);
        var goal = GoalOf(contents[points[0]].Steps);
        foreach (var point in points)
        {
            FillDays(contents[point], draws[point], work.Days);
            var found = ForwardPass.Run(net, work.Days, work.Starts, work.Finishes, work.Drivers.AsSpan(0, net.Cells.Count)) < 0;
            Keep(work, contents[point].Steps, point, found, net.Horizon.LastDay);
            var last = Last(goal, work.Run.Ends, point);
            work.Run.Finish[point] = last < 0 ? net.Horizon.StartDay : work.Run.Ends[last][point];
            if (found)
            {
                CountChain(net, last, work, weights[point]);
            }
        }
    }

    private void FillDays(WorldContent content, int trial, int[] days)
    {
        for (var s = 0; s < days.Length; s++)
        {
            if (content.Steps[s])
            {
                days[s] = outlook.Durations[s].Days(trial);
            }
        }

        for (var e = 0; e < outlook.Events.Length; e++)
        {
            if (content.Events[e] && outlook.Events[e] is { More: { } more } happening && happening.Happens(trial))
            {
                days[happening.Step] += more.Days(trial);
            }
        }
    }

    // As in Deadlines: the steps of meetings, or all where nobody meets.
    private int[] GoalOf(bool[] present)
    {
        var meet = Array.FindAll(_meeting, s => present[s]);
        return meet.Length > 0 ? meet : [.. Enumerable.Range(0, present.Length).Where(s => present[s])];
    }

    private static void Keep(Work work, bool[] present, int point, bool found, int end)
    {
        for (var s = 0; s < present.Length; s++)
        {
            work.Run.Starts[s][point] = !present[s] ? StepRun.Absent : found ? work.Starts[s] : end;
            work.Run.Ends[s][point] = !present[s] ? StepRun.Absent : found ? Math.Max(work.Starts[s], work.Finishes[s] - 1) : end;
        }
    }

    private static int Last(int[] goal, int[][] ends, int point)
    {
        var last = -1;
        foreach (var s in goal)
        {
            last = last < 0 || ends[s][point] > ends[last][point] ? s : last;
        }

        return last;
    }

    private static void CountChain(CompiledNetwork net, int last, Work work, double weight)
    {
        for (var (at, steps) = (last, 0); at >= 0 && steps < net.Count; steps++)
        {
            work.Deciding[at] += weight;
            var driver = work.Drivers[net.Cells.Of[at]];
            at = driver < 0 ? -1 : net.Bounds[driver].From;
        }
    }

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];

    private sealed class Work(int steps, StepRun run)
    {
        public StepRun Run => run;

        public int[] Days { get; } = new int[steps];

        public int[] Starts { get; } = new int[steps];

        public int[] Finishes { get; } = new int[steps];

        public int[] Drivers { get; } = new int[steps];

        public double[] Deciding { get; } = new double[steps];
    }
}
