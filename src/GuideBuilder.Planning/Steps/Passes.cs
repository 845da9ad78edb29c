using GuideBuilder.Planning.Sequence;

namespace GuideBuilder.Planning.Steps;

/// <summary>The passes over the base plan's network: likely durations forward and backward, and the last days with every duration at its most.</summary>
internal sealed record Passes(LocalDate Start, Forward Forward, Latest? Latest, Floats? Floats, ImmutableArray<LocalDate> Slow)
{
    /// <summary>Runs them. The backward pass ends where everything would end if the goal were reached on the needed-by date; without one, at the plan's own finish.</summary>
    public static Passes Of(StepNetwork network, LocalDate start)
    {
        var horizon = new Horizon(start);
        var net = Sequencer.Compile(network.Network, horizon);
        var forward = Sequencer.Forward(net);
        if (forward.Finish is not { } finish)
        {
            return new(start, forward, null, null, []);
        }

        var latest = Sequencer.Backward(network.Network, forward, End(network.Network, horizon, finish));
        return new(start, forward, latest, Sequencer.Floats(network.Network, forward, latest), LastDays(network.Network, horizon, network.Durations(t => t.High)));
    }

    /// <summary>The finish with every duration at its least. Of the steps that are in every world, no world finishes earlier.</summary>
    public static LocalDate Quickest(StepNetwork network, NeededFor what, LocalDate start) =>
        Deadlines.FinishIn(network.Steps, what, LastDays(network.Network, new(start), network.Durations(t => t.Low)), start);

    private static LocalDate End(Network network, Horizon horizon, LocalDate finish)
    {
        var delayed = network with { Activities = [.. network.Activities.Select(a => a.FinishBy is null ? a : a with { NotBefore = a.FinishBy })] };
        var later = network.Activities.All(a => a.FinishBy is null) ? finish : Sequencer.Forward(Sequencer.Compile(delayed, horizon)).Finish ?? finish;
        return LocalDate.Max(finish, later);
    }

    // Limits that leave no day give way; beyond the horizon everything counts as its last day.
    private static ImmutableArray<LocalDate> LastDays(Network network, Horizon horizon, int[] durations)
    {
        var net = Sequencer.Compile(network, horizon);
        var (starts, finishes) = (new int[net.Count], new int[net.Count]);
        var found = Sequencer.ForwardDays(net, durations, starts, finishes) is not null;
        return !found && network.Maximals.Length > 0
            ? LastDays(network with { Maximals = [] }, horizon, durations)
            : [.. Enumerable.Range(0, net.Count).Select(i => found ? horizon.Date(Math.Max(starts[i], finishes[i] - 1)) : horizon.End)];
    }
}
