namespace GuideBuilder.Planning.Steps;

/// <summary>The links of steps in the plan, where a link to a step that is not in the plan leads on to that step's own predecessors.</summary>
internal static class Bridges
{
    /// <summary>The links of a step to steps in the plan. A bridged link waits for nothing of its own: the wait belonged to the step that is left out.</summary>
    public static IEnumerable<Link> Over(Step step, FrozenSet<string> present, FrozenDictionary<string, Step> all) =>
        step.After.SelectMany(l => Over(l, present, all, [step.Id])).DistinctBy(l => (l.Step, l.Kind, l.Lag, l.Of, l.Whose, l.SameDay));

    private static IEnumerable<Link> Over(Link link, FrozenSet<string> present, FrozenDictionary<string, Step> all, ImmutableHashSet<string> passed)
    {
        if (present.Contains(link.Step))
        {
            return [link];
        }

        return passed.Contains(link.Step) || !all.TryGetValue(link.Step, out var absent)
            ? []
            : absent.After.SelectMany(l => Over(l, present, all, passed.Add(link.Step))).Select(l => l with { Lag = 0, Of = DayCount.CalendarDays, Whose = null, SameDay = false, Place = link.Place });
    }
}
