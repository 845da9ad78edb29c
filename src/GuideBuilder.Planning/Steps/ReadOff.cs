namespace GuideBuilder.Planning.Steps;

/// <summary>Facts that are read off the finished plan, each from its lowest to its highest value.</summary>
internal static class ReadOff
{
    /// <summary>Hours without supply: at least those of the settled steps at their quickest, at most those of all that may apply at their slowest.</summary>
    public static Value.Spread OffSupply(ImmutableArray<Planned<Step>> steps) => new(
        Quantity.Of(Hours.OffSupply(steps.Where(s => s.State == ItemState.Settled).Select(s => s.Item)).Low, "hours"),
        Quantity.Of(Hours.OffSupply(steps.Where(s => s.IsPresent).Select(s => s.Item)).High, "hours"));

    /// <summary>The months in which the first meeting may fall; from 1 to 12 where they run over a new year, because a spread has no gap. Null where nobody meets.</summary>
    public static Value.Spread? Months(Schedule schedule)
    {
        if (schedule.Meetings.IsEmpty)
        {
            return null;
        }

        var range = schedule.Meetings[0].Range;
        return range.Early.Year == range.Late.Year ? Between(range.Early.Month, range.Late.Month) : Between(1, 12);
    }

    private static Value.Spread Between(int first, int last) => new(Quantity.Number(first), Quantity.Number(last));
}
