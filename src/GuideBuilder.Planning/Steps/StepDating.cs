namespace GuideBuilder.Planning.Steps;

/// <summary>What the passes say of one step.</summary>
internal static class StepDating
{
    /// <summary>The dates of the step at that place of the network.</summary>
    public static StepDates Of(StepNetwork network, Passes passes, int i)
    {
        var (step, timing, latest, slack) = (network.Steps[i], passes.Forward.Timings[i], passes.Latest!.Spans[i], passes.Floats!.Activities[i]);
        var pin = network.Pins.GetValueOrDefault(step.Id);
        var done = pin?.Done is not null;
        return new(
            timing.Start,
            timing.Finish,
            latest.Start,
            latest.Finish,
            Range(passes.Quick[i].Start, timing.Start, passes.Slow[i].Start),
            Range(passes.Quick[i].Finish, timing.Finish, passes.Slow[i].Finish),
            done ? 0 : slack.Total,
            done ? 0 : slack.Free,
            done,
            pin?.Given,
            BookBy(network, step, latest.Start),
            timing.Driver.From);
    }

    /// <summary>The latest start less the longest notice that the step's links ask.</summary>
    private static LocalDate BookBy(StepNetwork network, Step step, LocalDate latest) =>
        network.Network.Precedences.Where(p => p.To == step.Id && p.Lag > 0)
            .Select(p => p.LagCalendar.Add(latest, -(p.Kind == LinkKind.FinishToStart ? p.Lag + 1 : p.Lag)))
            .Append(latest)
            .Min();

    // With limits between steps a quicker plan may put a step later; the range then still holds all three.
    private static DateRange Range(LocalDate quick, LocalDate likely, LocalDate slow) =>
        new(LocalDate.Min(quick, LocalDate.Min(likely, slow)), likely, LocalDate.Max(quick, LocalDate.Max(likely, slow)));
}
