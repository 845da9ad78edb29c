using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Steps;

/// <summary>The passes over one network: likely durations forward and backward, and forward with every duration at its least and at its most.</summary>
internal sealed record Passes(LocalDate Start, Forward Forward, Latest? Latest, Floats? Floats, ImmutableArray<DaySpan> Quick, ImmutableArray<DaySpan> Slow)
{
    /// <summary>Runs them. The backward pass ends where everything would end if the goal were reached on the needed-by date; without one, at the plan's own finish.</summary>
    public static Passes Of(StepNetwork network, LocalDate start)
    {
        var horizon = new Horizon(start);
        var net = Sequencer.Compile(network.Network, horizon);
        var forward = Sequencer.Forward(net);
        if (forward.Finish is not { } finish)
        {
            return new(start, forward, null, null, [], []);
        }

        var latest = Sequencer.Backward(network.Network, forward, End(network.Network, horizon, finish));
        return new(
            start,
            forward,
            latest,
            Sequencer.Floats(network.Network, forward, latest),
            Run(net, network.Durations(t => t.Low)),
            Run(net, network.Durations(t => t.High)));
    }

    private static LocalDate End(Network network, Horizon horizon, LocalDate finish)
    {
        var delayed = network with { Activities = [.. network.Activities.Select(a => a.FinishBy is null ? a : a with { NotBefore = a.FinishBy })] };
        var later = network.Activities.All(a => a.FinishBy is null) ? finish : Sequencer.Forward(Sequencer.Compile(delayed, horizon)).Finish ?? finish;
        return LocalDate.Max(finish, later);
    }

    // Beyond the horizon everything counts as its last day.
    private static ImmutableArray<DaySpan> Run(CompiledNetwork net, int[] durations)
    {
        var (starts, finishes) = (new int[net.Count], new int[net.Count]);
        var done = Sequencer.ForwardDays(net, durations, starts, finishes) is not null;
        LocalDate Date(int day) => done ? net.Horizon.Date(day) : net.Horizon.End;
        return [.. Enumerable.Range(0, net.Count).Select(i => new DaySpan(net.Network.Activities[i].Id, Date(starts[i]), Date(Math.Max(starts[i], finishes[i] - 1))))];
    }
}
