using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Sequence;
using GuideBuilder.Tests.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Planning.Chance;

public sealed class NetworkTrialsTests
{
    private const int Trials = 5000;

    [Fact]
    public void The_numbers_do_not_depend_on_the_number_of_threads()
    {
        var net = Compiled(RandomNetwork.Of(11), RandomNetwork.Start);
        var (one, many) = (NetworkTrials.Run(net, Trials, Drawn(net), 1), NetworkTrials.Run(net, Trials, Drawn(net), 8));

        Assert.Equal(one.Finish, many.Finish);
        Assert.Equal(one.Starts.SelectMany(x => x), many.Starts.SelectMany(x => x));
        Assert.Equal(one.Finishes.SelectMany(x => x), many.Finishes.SelectMany(x => x));
        Assert.Equal(one.Deciding, many.Deciding);
    }

    [Fact]
    public void With_nothing_drawn_every_trial_is_the_plain_plan()
    {
        var network = RandomNetwork.Of(11);
        var (forward, net) = (Sequencer.Forward(network, RandomNetwork.Start), Compiled(network, RandomNetwork.Start));
        var trials = NetworkTrials.Run(net, 10, (_, _) => { }, 2);

        Assert.All(trials.Finish, f => Assert.Equal(forward.Finish, net.Horizon.Date(f)));
        Assert.Equal(forward.Timings.Select(t => t.Finish), trials.Finishes.Select(f => net.Horizon.Date(f[9])));
        Assert.Equal(Sequencer.DrivingChain(forward).Select(t => t.Id).Order(), network.Activities.Where((_, i) => trials.Deciding[i] == 10).Select(a => a.Id).Order());
    }

    [Fact]
    public void A_chain_takes_the_sum_of_the_means_and_steps_side_by_side_take_longer_than_one()
    {
        var chain = Compiled(Of([Does("a", 1), Does("b", 1), Does("c", 1)], [After("b", "a"), After("c", "b")]), Zero);
        var beside = Compiled(Of([Does("a", 1), Does("b", 1), Does("c", 1)]), Zero);
        double Mean(CompiledNetwork net) => NetworkTrials.Run(net, Trials, Drawn(net), 2).Finish.Average(f => f - net.Horizon.Day(Zero) + 1);

        Assert.Equal(3 * 3, Mean(chain), 4 * Math.Sqrt(3 * 2.0 / Trials));
        Assert.InRange(Mean(beside), 3.5, 5);
    }

    /// <summary>The greatest of three independent durations, its mean added up from the distribution of one.</summary>
    [Fact]
    public void The_mean_of_the_last_of_three_is_the_one_added_up()
    {
        var net = Compiled(Of([Does("a", 1), Does("b", 1), Does("c", 1)]), Zero);
        var one = Enumerable.Range(0, 200_000).Select(i => SamplingTable.Days(1, 2, 9).Step((uint)((i + 0.5) / 200_000 * (1UL << 32)))).CountBy(s => s).ToDictionary(p => p.Key, p => p.Value / 200_000.0);
        var below = Enumerable.Range(0, 9).Select(k => one.Where(p => p.Key <= k).Sum(p => p.Value)).ToArray();

        Assert.Equal(1 + below.Sum(p => 1 - (p * p * p)), NetworkTrials.Run(net, Trials, Drawn(net), 2).Finish.Average(f => f - net.Horizon.Day(Zero) + 1), 0.08);
    }

    [Fact]
    public void A_trial_without_dates_is_later_than_all()
    {
        var net = Compiled(Of([Does("a", 1)]), Zero);

        Assert.Equal([TrialDates.Later, net.Horizon.Day(Zero)], NetworkTrials.Run(net, 2, (trial, days) => days[0] = trial == 0 ? 5000 : 1, 1).Finish);
    }

    private static CompiledNetwork Compiled(Network network, LocalDate start) => Sequencer.Compile(network, new(start));

    private static DurationsOfTrial Drawn(CompiledNetwork net)
    {
        var table = SamplingTable.Days(1, 2, 9);
        var draws = Enumerable.Range(0, net.Count).Select(i => Draws.Of(1, $"a{i}", "days", Trials)).ToArray();
        return (trial, days) =>
        {
            for (var i = 0; i < days.Length; i++)
            {
                days[i] = days[i] == 0 ? 0 : days[i] + table.Step(draws[i][trial]);
            }
        };
    }
}
