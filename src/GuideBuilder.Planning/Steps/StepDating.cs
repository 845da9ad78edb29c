using GuideBuilder.Planning.Sequence;
using GuideBuilder.Planning.Trials;

namespace GuideBuilder.Planning.Steps;

/// <summary>What the passes say of one step.</summary>
internal static class StepDating
{
    /// <summary>The dates of the step at that place of the network.</summary>
    public static StepDates Of(StepNetwork network, Passes passes, TrialRun trials, int i)
    {
        var (step, timing, latest, slack) = (network.Steps[i], passes.Forward.Timings[i], passes.Latest!.Spans[i], passes.Floats!.Activities[i]);
        var pin = network.Pins.GetValueOrDefault(step.Id);
        var done = pin?.Done is not null;
        return new(
            timing.Start,
            timing.Finish,
            latest.Start,
            latest.Finish,
            trials.Of(step) is { } starts ? trials.Range(starts.Start) : new(timing.Start, timing.Start, timing.Start),
            trials.Of(step) is { } ends ? trials.Range(ends.End) : new(timing.Finish, timing.Finish, timing.Finish),
            done ? 0 : slack.Total,
            done ? 0 : slack.Free,
            done,
            pin?.Given,
            BookBy(network, step, latest.Start),
            timing.Driver.From)
        {
            Decider = DeciderOf(timing.Driver.Kind),
            Via = timing.Driver.Via,
            FreeFrom = timing.Driver.Free,
        };
    }

    private static Decider DeciderOf(DriverKind kind) => kind switch
    {
        DriverKind.Start => Decider.Start,
        DriverKind.NotBefore => Decider.NotBefore,
        DriverKind.Finish => Decider.Finish,
        DriverKind.OtherStart => Decider.OtherStart,
        DriverKind.Within => Decider.Within,
        DriverKind.Given => Decider.Given,
        DriverKind.Done => Decider.Done,
        _ => throw new UnreachableException(),
    };

    /// <summary>The latest start less the longest notice that the step's links ask.</summary>
    private static LocalDate BookBy(StepNetwork network, Step step, LocalDate latest) =>
        network.Network.Precedences.Where(p => p.To == step.Id && p.Lag > 0)
            .Select(p => p.LagCalendar.Add(latest, -(p.Kind == LinkKind.FinishToStart ? p.Lag + 1 : p.Lag)))
            .Append(latest)
            .Min();
}
