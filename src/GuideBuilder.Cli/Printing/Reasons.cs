namespace GuideBuilder.Cli.Printing;

/// <summary>The reason of every item of a plan by the item's id.</summary>
internal static class Reasons
{
    /// <summary>Ids are unique over all kinds, so one table holds them all.</summary>
    internal static SortedDictionary<string, Because> In(Plan plan)
    {
        var all = plan.Ways.Select(w => w.Way.Because)
            .Concat(plan.Parties.Select(p => p.Because))
            .Concat(plan.Steps.Select(s => s.Step.Because))
            .Concat(plan.Costs.Select(c => c.Cost.Because))
            .Concat(plan.Hazards.Select(h => h.Hazard.Because))
            .Concat(plan.Consents.Select(c => c.Because))
            .Concat(plan.Clocks.Select(c => c.Because))
            .Concat(plan.Facts.Derived.Values.Select(f => f.Because));
        var byId = new SortedDictionary<string, Because>(StringComparer.Ordinal);
        foreach (var because in all)
        {
            byId[because.RuleId] = because;
        }

        return byId;
    }
}
