namespace GuideBuilder.Planning.Electrical;

/// <summary>Whether the nearer fuse goes first. Source: a fuse maker's application guidance, row selectivity: ratings at least 1.6 to 1, fuses of one family.</summary>
public static class Selectivity
{
    /// <summary>How many times the upstream rating is the downstream one; null if either is nothing or out of range.</summary>
    public static decimal? Ratio(ElectricalFigures figures, Quantity upstream, Quantity downstream) => figures.Amps(upstream).Over(figures.Amps(downstream));

    /// <summary>Whether a fault behind the downstream fuse leaves the upstream one whole; null where the ratio is not known.</summary>
    public static bool? Holds(ElectricalFigures figures, Quantity upstream, Quantity downstream) =>
        (Ratio(figures, upstream, downstream), figures.Number("selectivity", "ratio")) is ({ } ratio, { } wanted) ? ratio >= wanted : null;

    /// <summary>The largest fuse of a family in the table that is selective with the main fuse, in amps; null if none is.</summary>
    public static Quantity? LargestUnder(ElectricalFigures figures, Quantity mainFuse, string family) =>
        figures.Group("fuse-").Where(r => r.Words("family") == family).Select(r => r.Find("rating")).OfType<Quantity>()
            .Where(rating => Holds(figures, mainFuse, rating) == true).MaxBy(rating => rating.Base);
}
