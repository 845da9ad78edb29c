namespace GuideBuilder.Planning.Log;

/// <summary>What should be settled before money is paid: all that the step of acceptance waits for.</summary>
internal static class Gates
{
    /// <summary>The gates of every present step that an acceptance in the log stands for, in the order in which it names them.</summary>
    public static IEnumerable<Gate> Of(ImmutableArray<PlannedStep> steps)
    {
        var byId = steps.ToFrozenDictionary(s => s.Step.Item.Id, StringComparer.Ordinal);
        return from payment in steps
               where payment.Step.IsPresent && payment.Step.Item.LoggedAs?.Event == LogKind.Accepted
               from link in payment.Step.Item.After
               where byId[link.Step].Step.IsPresent
               let gate = byId[link.Step]
               select new Gate(payment.Step.Item.Id, link.Step, StateOf(gate, payment), gate.Dates?.EarliestFinish);
    }

    private static GateState StateOf(PlannedStep gate, PlannedStep payment) =>
        gate.Dates is { Done: true } ? GateState.Done
        : payment.Dates is { Done: true } ? GateState.LeftOpen
        : gate.Step.State == ItemState.Open ? GateState.MayApply
        : GateState.NotYet;
}
