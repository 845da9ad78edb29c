namespace GuideBuilder.Planning.Steps;

/// <summary>The links of steps in the plan, where a link to a step that is not in the plan leads on to that step's own predecessors. What lies behind a step that is left out is found once.</summary>
internal sealed class Bridges(FrozenSet<string> present, FrozenDictionary<string, Step> all)
{
    private readonly Dictionary<string, ImmutableArray<Link>> _behind = new(StringComparer.Ordinal);

    /// <summary>The links of a step to steps in the plan. A bridged link waits for nothing of its own: the wait belonged to the step that is left out.</summary>
    public IEnumerable<Link> Of(Step step) => Distinct(step.After.SelectMany(l => present.Contains(l.Step) ? [l] : Behind(l.Step)).Where(l => l.Step != step.Id));

    private ImmutableArray<Link> Behind(string absent)
    {
        if (_behind.TryGetValue(absent, out var found) || !all.TryGetValue(absent, out var step))
        {
            return found.IsDefault ? [] : found;
        }

        // Steps left out that wait for each other lead nowhere.
        _behind[absent] = [];
        return _behind[absent] = [.. Distinct(step.After.SelectMany(l => present.Contains(l.Step) ? [Bare(l)] : Behind(l.Step)))];
    }

    private static Link Bare(Link link) => link with { Lag = 0, Of = DayCount.CalendarDays, Whose = null, SameDay = false };

    private static IEnumerable<Link> Distinct(IEnumerable<Link> links) => links.DistinctBy(l => (l.Step, l.Kind, l.Lag, l.Of, l.Whose, l.SameDay));
}
