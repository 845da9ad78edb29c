using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;

namespace GuideBuilder.Planning.Trials;

/// <summary>What the trials with the same steps came to: by step, then trial, its start and its last day; and how often each step stands in the chain that decides the finish. Days are day numbers; a trial without dates has the horizon's last day everywhere.</summary>
internal sealed record StepRun(Sharing<ImmutableArray<Step>> Set, int[][] Starts, int[][] Ends, double[] Deciding);

/// <summary>Runs trials with the same steps: the loop works on arrays of day numbers, not on the rules.</summary>
internal static class StepRuns
{
    /// <summary>The run of a set of steps that has been made a network; writes the day on which the goal is reached by point.</summary>
    public static StepRun Of(Sharing<ImmutableArray<Step>> set, CompiledNetwork net, TrialWorlds worlds, Outlook outlook, int[] finish)
    {
        var run = new StepRun(set, Table(net.Count, set.Points.Length), Table(net.Count, set.Points.Length), new double[net.Count]);
        var goal = Deadlines.Goal(set.What).Select(s => net.IndexOf(s.Id)).ToArray();
        var durations = set.What.Select(outlook.DurationOf).ToArray();
        var (days, starts, finishes, drivers) = (new int[net.Count], new int[net.Count], new int[net.Count], new int[net.Cells.Count]);
        for (var i = 0; i < set.Points.Length; i++)
        {
            var point = set.Points[i];
            for (var s = 0; s < days.Length; s++)
            {
                days[s] = durations[s].Days(worlds.Draws[point]);
            }

            var found = ForwardPass.Run(net, days, starts, finishes, drivers) < 0;
            Keep(run, i, found, starts, finishes, net.Horizon.Day(net.Horizon.End));
            var last = Last(goal, run.Ends, i);
            finish[point] = last < 0 ? net.Horizon.StartDay : run.Ends[last][i];
            if (found)
            {
                CountChain(net, last, drivers, run.Deciding, worlds.Weights[point]);
            }
        }

        return run;
    }

    private static void Keep(StepRun run, int trial, bool found, int[] starts, int[] finishes, int end)
    {
        for (var s = 0; s < starts.Length; s++)
        {
            run.Starts[s][trial] = found ? starts[s] : end;
            run.Ends[s][trial] = found ? Math.Max(starts[s], finishes[s] - 1) : end;
        }
    }

    private static int Last(int[] goal, int[][] ends, int trial)
    {
        var last = -1;
        foreach (var s in goal)
        {
            last = last < 0 || ends[s][trial] > ends[last][trial] ? s : last;
        }

        return last;
    }

    private static void CountChain(CompiledNetwork net, int last, int[] drivers, double[] deciding, double weight)
    {
        for (var (at, steps) = (last, 0); at >= 0 && steps < net.Count; steps++)
        {
            deciding[at] += weight;
            var driver = drivers[net.Cells.Of[at]];
            at = driver < 0 ? -1 : net.Bounds[driver].From;
        }
    }

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];
}
