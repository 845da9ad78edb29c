namespace GuideBuilder.Rendering.Pages;

/// <summary>Puts the steps of a meeting in the order of their turns, whatever else stands between them.</summary>
internal static class TurnOrder
{
    /// <summary>The same steps: those of one meeting, and of one day where days count, by turn in the places that they had; all others where they were.</summary>
    internal static ImmutableArray<PlannedStep> Of(IEnumerable<PlannedStep> steps, bool byDay)
    {
        var all = steps.ToArray();
        var turns = Enumerable.Range(0, all.Length).Where(i => all[i].Step.Item.Meeting is not null).GroupBy(i => (all[i].Step.Item.Meeting, byDay ? all[i].Dates?.EarliestStart : null)).ToArray();
        foreach (var places in turns)
        {
            var inTurn = places.Select(i => all[i]).OrderBy(s => s.Step.Item.Order).ToArray();
            foreach (var (place, step) in places.Zip(inTurn))
            {
                all[place] = step;
            }
        }

        return [.. all];
    }
}
