namespace GuideBuilder.Planning.Steps;

/// <summary>Hours of the clock: of each turn, and without supply.</summary>
internal static class Hours
{
    /// <summary>How long a step's turn takes on the day: its hours, or its duration where that is in hours.</summary>
    public static ThreePoint Of(Step step) => step.Hours ?? (step.Takes.Unit == DayCount.Hours ? step.Takes.Amount : ThreePoint.Zero);

    /// <summary>The hours without supply: in each meeting from the first turn with supply off to the end of the last, and those of such steps outside meetings.</summary>
    public static ThreePoint OffSupply(IEnumerable<Step> steps)
    {
        var all = steps.ToArray();
        var meetings = all.Where(s => s.Meeting is not null).GroupBy(s => s.Meeting, StringComparer.Ordinal).Select(m => Window(Meetings.InOrder(m)));
        return Total(meetings.Concat(all.Where(s => s.Meeting is null && s.SupplyOff).Select(Of)));
    }

    private static ThreePoint Window(ImmutableArray<Step> turns)
    {
        var first = turns.FirstOrDefault(s => s.SupplyOff);
        return first is null ? ThreePoint.Zero : Total(turns[turns.IndexOf(first)..(turns.IndexOf(turns.Last(s => s.SupplyOff)) + 1)].Select(Of));
    }

    private static ThreePoint Total(IEnumerable<ThreePoint> parts) => parts.Aggregate(ThreePoint.Zero, ThreePoint.Add);
}
