namespace GuideBuilder.Planning.Hazards;

/// <summary>What may be done while a stop sign stands.</summary>
internal static class StopSteps
{
    /// <summary>The steps still to come that end the stop signs, and all that these wait for, in guidance order; none where no sign stands.</summary>
    public static ImmutableArray<string> Of(Plan plan)
    {
        var ahead = plan.Steps.Where(s => s.Step.IsPresent && s.Dates is not { Done: true }).Select(s => s.Step.Item).ToImmutableArray();
        var wanted = plan.StopSigns.Select(h => h.Hazard.Item.Until).OfType<string>().ToHashSet(StringComparer.Ordinal);
        bool grew;
        do
        {
            grew = ahead.Where(s => wanted.Contains(s.Id)).SelectMany(s => s.After).Any(l => wanted.Add(l.Step));
        }
        while (grew);

        return [.. ahead.Select(s => s.Id).Where(wanted.Contains)];
    }
}
