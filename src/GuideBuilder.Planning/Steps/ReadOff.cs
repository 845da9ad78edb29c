using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Trials;

namespace GuideBuilder.Planning.Steps;

/// <summary>Facts that are read off the finished plan, each from its lowest to its highest value.</summary>
internal static class ReadOff
{
    /// <summary>Hours without supply: at least those of the settled steps at their quickest, at most those of all that may apply at their slowest.</summary>
    public static Value.Spread OffSupply(ImmutableArray<Planned<Step>> steps) => new(
        Quantity.Of(Hours.OffSupply(steps.Where(s => s.State == ItemState.Settled).Select(s => s.Item)).Low, "hours"),
        Quantity.Of(Hours.OffSupply(steps.Where(s => s.IsPresent).Select(s => s.Item)).High, "hours"));

    /// <summary>The months in which a meeting falls in any trial; from 1 to 12 where they run over a new year, because a spread has no gap. Null where nobody meets.</summary>
    public static Value.Spread? Months(ImmutableArray<Planned<Step>> steps, TrialRun trials)
    {
        var days = steps.Where(s => s.IsPresent && s.Item.Meeting is not null).Select(s => trials.Of(s.Item)?.Start).OfType<Quantiles<int>>().ToArray();
        if (days.Length == 0)
        {
            return null;
        }

        var (first, last) = (trials.Horizon.Date(days.Min(d => d.Lowest)), trials.Horizon.Date(days.Max(d => d.Highest)));
        return first.Year == last.Year ? Between(first.Month, last.Month) : Between(1, 12);
    }

    private static Value.Spread Between(int first, int last) => new(Quantity.Number(first), Quantity.Number(last));
}
