namespace GuideBuilder.Planning.Ground;

/// <summary>Fencing, covering and water.</summary>
public static class Guarding
{
    /// <summary>Length in metres of a barrier round a hole, standing back on each side by row barrier. Null outside sides 0.3 to 10 m.</summary>
    public static Quantity? Barrier(GroundFigures figures, Quantity? length, Quantity? width) =>
        (2 * (figures.Side(length) + figures.Side(width) + (4 * figures.In("barrier", "set-back", "m")))).Of("m");

    /// <summary>Water in m³ that rain of 0 to 500 mm leaves in an open hole. Null outside.</summary>
    public static Quantity? RainWater(GroundFigures figures, Quantity? area, Quantity? rain) => (figures.SquareMetres(area) * figures.Rain(rain)).Of("m³");

    /// <summary>Reasons to stop at once and get everybody out, in the order of the table (rows stop-…).</summary>
    public static IEnumerable<TableRow> Stops(GroundFigures figures) => figures.Group("stop-");
}
