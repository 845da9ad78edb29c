using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Chance;

/// <summary>Fills the durations of one trial, in whole open days, in the network's order. Called from several threads.</summary>
public delegate void DurationsOfTrial(int trial, Span<int> durations);

/// <summary>
/// What came of many trials, as day numbers of the network's horizon. Finish, by trial, is the last day used, or Later where a trial found no dates within three years.
/// Starts and finishes (last days) are by activity, then trial. Deciding counts the trials in which an activity stands in the chain that decides the finish.
/// </summary>
public sealed record TrialDates(int[] Finish, int[][] Starts, int[][] Finishes, int[] Deciding)
{
    /// <summary>Later than every day.</summary>
    public const int Later = int.MaxValue;
}

/// <summary>Runs a network again and again with other durations. The numbers do not depend on how many threads run it.</summary>
public static class NetworkTrials
{
    private const int Block = 250;

    /// <summary>Runs trials numbered from 0, on at most so many threads.</summary>
    public static TrialDates Run(CompiledNetwork net, int trials, DurationsOfTrial draw, int threads)
    {
        var results = new TrialDates(new int[trials], Table(net.Count, trials), Table(net.Count, trials), new int[net.Count]);
        var blocks = (trials + Block - 1) / Block;
        var deciding = new int[blocks][];
        Parallel.For(0, blocks, new() { MaxDegreeOfParallelism = threads }, b => deciding[b] = RunBlock(net, b * Block, Math.Min(trials, (b + 1) * Block), draw, results));
        foreach (var counts in deciding)
        {
            for (var i = 0; i < net.Count; i++)
            {
                results.Deciding[i] += counts[i];
            }
        }

        return results;
    }

    private static int[] RunBlock(CompiledNetwork net, int from, int to, DurationsOfTrial draw, TrialDates results)
    {
        var (durations, starts, finishes) = (new int[net.Count], new int[net.Count], new int[net.Count]);
        var (drivers, deciding) = (new int[net.Cells.Count], new int[net.Count]);
        for (var trial = from; trial < to; trial++)
        {
            net.Durations.CopyTo(durations);
            draw(trial, durations);
            var found = ForwardPass.Run(net, durations, starts, finishes, drivers) < 0;
            results.Finish[trial] = found ? Sequencer.LastDay(net, starts, finishes) : TrialDates.Later;
            for (var i = 0; i < net.Count; i++)
            {
                results.Starts[i][trial] = found ? starts[i] : TrialDates.Later;
                results.Finishes[i][trial] = found ? Math.Max(starts[i], finishes[i] - 1) : TrialDates.Later;
            }

            if (found)
            {
                CountChain(net, starts, finishes, drivers, deciding);
            }
        }

        return deciding;
    }

    private static void CountChain(CompiledNetwork net, int[] starts, int[] finishes, int[] drivers, int[] deciding)
    {
        var at = Sequencer.LastActivity(net, starts, finishes);
        for (var steps = 0; at >= 0 && steps < net.Count; steps++)
        {
            deciding[at]++;
            var driver = drivers[net.Cells.Of[at]];
            at = driver < 0 ? -1 : net.Bounds[driver].From;
        }
    }

    private static int[][] Table(int rows, int columns) => [.. Enumerable.Range(0, rows).Select(_ => new int[columns])];
}
