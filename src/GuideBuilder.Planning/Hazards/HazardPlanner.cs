namespace GuideBuilder.Planning.Hazards;

/// <summary>The hazard register over all ways that are still possible.</summary>
internal static class HazardPlanner
{
    /// <summary>Every hazard with the ways in which it arises. Where the chosen way has it, its state and reason are those of the chosen way; else those of the first way that has it.</summary>
    public static ImmutableArray<PlannedHazard> Union(IReadOnlyList<(string Way, ImmutableArray<Planned<Hazard>> Hazards)> possible, string chosen, int count) =>
        [.. Enumerable.Range(0, count).Select(i => One([.. possible.Select(p => (p.Way, p.Hazards[i]))], chosen))];

    private static PlannedHazard One((string Way, Planned<Hazard> Hazard)[] byWay, string chosen)
    {
        var arises = byWay.Where(w => w.Hazard.IsPresent).ToArray();
        var shown = arises.Where(w => w.Way == chosen).Concat(arises).Concat(byWay.Where(w => w.Way == chosen)).First();
        return new(shown.Hazard, [.. arises.Select(w => w.Way)]);
    }
}
