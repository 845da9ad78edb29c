using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Steps;

namespace GuideBuilder.Planning.Trials;

/// <summary>What the trials of one class came to: by trial the day on which the goal is reached, the sum gross and the VAT in it; by step, then trial, its start and its last day; and how often each step stands in the deciding chain. Days are day numbers; a trial without dates has the horizon's last day everywhere.</summary>
internal sealed record ClassRun(WorldClass Class, int[] Finish, decimal[] Gross, decimal[] Vat, int[][] Starts, int[][] Ends, int[] Deciding);

/// <summary>Runs the trials of a class: the loop works on arrays of day numbers, not on the rules.</summary>
internal static class ClassRuns
{
    /// <summary>The run of a class whose steps have been made a network.</summary>
    public static ClassRun Of(WorldClass worlds, CompiledNetwork net, Outlook outlook)
    {
        var trials = worlds.Trials.Length;
        var run = new ClassRun(worlds, new int[trials], new decimal[trials], new decimal[trials], Table(net.Count, trials), Table(net.Count, trials), new int[net.Count]);
        var goal = Deadlines.Goal(worlds.Steps).Select(s => net.IndexOf(s.Id)).ToArray();
        var durations = worlds.Steps.Select(outlook.DurationOf).ToArray();
        var (days, starts, finishes, drivers) = (new int[net.Count], new int[net.Count], new int[net.Count], new int[net.Cells.Count]);
        for (var i = 0; i < trials; i++)
        {
            for (var s = 0; s < days.Length; s++)
            {
                days[s] = durations[s].Days(worlds.Trials[i]);
            }

            var found = ForwardPass.Run(net, days, starts, finishes, drivers) < 0;
            Keep(run, i, found, starts, finishes, net.Horizon.Day(net.Horizon.End));
            var last = Last(goal, run.Ends, i);
            run.Finish[i] = last < 0 ? net.Horizon.StartDay : run.Ends[last][i];
            if (found)
            {
                CountChain(net, last, drivers, run.Deciding);
            }
        }

        AddMoney(run, worlds, outlook);
        return run;
    }

    private static void Keep(ClassRun run, int trial, bool found, int[] starts, int[] finishes, int end)
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

    private static void CountChain(CompiledNetwork net, int last, int[] drivers, int[] deciding)
    {
        for (var (at, steps) = (last, 0); at >= 0 && steps < net.Count; steps++)
        {
            deciding[at]++;
            var driver = drivers[net.Cells.Of[at]];
            at = driver < 0 ? -1 : net.Bounds[driver].From;
        }
    }

    private static void AddMoney(ClassRun run, WorldClass worlds, Outlook outlook)
    {
        foreach (var line in outlook.LinesOf(worlds))
        {
            for (var i = 0; i < run.Gross.Length; i++)
            {
                var gross = line.Gross(worlds.Trials[i]);
                run.Gross[i] += gross;
                run.Vat[i] += line.VatIn(gross);
            }
        }
    }

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];
}
