using GuideBuilder.Planning.Sequence;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Sequence;

public sealed class RandomNetworkTests
{
    private const int PutToTheSolver = 60;
    private static readonly LocalDate Last = RandomNetwork.Start.PlusDays(185);

    [Fact]
    public void Earliest_dates_and_what_is_impossible_are_those_of_a_constraint_solver()
    {
        var possible = 0;
        for (var seed = 0UL; seed < PutToTheSolver; seed++)
        {
            var net = RandomNetwork.Of(seed);
            var expected = ConstraintSolver.Earliest(net, RandomNetwork.Start);
            Assert.Equal(expected, Starts(Sequencer.Forward(net, RandomNetwork.Start)));
            possible += expected is null ? 0 : 1;
        }

        Assert.InRange(possible, PutToTheSolver / 3, PutToTheSolver - 5);
    }

    [Fact]
    public void Latest_dates_are_those_of_a_constraint_solver()
    {
        for (var seed = 0UL; seed < PutToTheSolver / 3; seed++)
        {
            var (net, forward, end) = Possible(RandomNetwork.Of(seed));
            if (forward.IsPossible)
            {
                Assert.Equal(ConstraintSolver.Latest(net, RandomNetwork.Start, end), Sequencer.Backward(net, forward, end).Spans.Select(s => s.Start));
            }
        }
    }

    [Fact]
    public void Dates_are_those_of_a_slow_search_day_by_day()
    {
        for (var seed = 1000UL; seed < 1000UL + (ulong)Sizes.Of("networks"); seed++)
        {
            var (net, forward, end) = Possible(RandomNetwork.Of(seed));
            Assert.Equal(SlowReference.Earliest(net, RandomNetwork.Start, Last), Starts(forward));
            if (forward.IsPossible)
            {
                Assert.Equal(SlowReference.Latest(net, end), Sequencer.Backward(net, forward, end).Spans.Select(s => s.Start));
            }
        }
    }

    private static (Network Net, Forward Forward, LocalDate End) Possible(Network net)
    {
        var forward = Sequencer.Forward(net, RandomNetwork.Start);
        return (net, forward, (forward.Finish ?? Last).PlusDays(12));
    }

    private static LocalDate[]? Starts(Forward forward) => forward.IsPossible ? [.. forward.Timings.Select(t => t.Start)] : null;
}
