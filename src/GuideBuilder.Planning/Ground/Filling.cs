namespace GuideBuilder.Planning.Ground;

/// <summary>Putting the ground back. Nobody fills before the crew has released the hole. Source: Specification for the Reinstatement of Openings in Highways, a good habit at home.</summary>
public static class Filling
{
    /// <summary>Layers, whole ones, of a thickness of 0 to 1 m in a height of 0 to 6 m. Null outside or without thickness.</summary>
    public static Quantity? Layers(GroundFigures figures, Quantity? height, Quantity? thickness) =>
        figures.Depth(height).Over(figures.Thickness(thickness)).Up().Of("");

    /// <summary>Passes of a machine (row passes-…) over each layer up to 100, 150 or 200 mm thick; null where it may not be used so, or the thickness is outside.</summary>
    public static Quantity? Passes(GroundFigures figures, string machine, bool cohesive, Quantity? thickness)
    {
        var band = figures.Thickness(thickness) switch
        {
            > 0 and <= 0.1m => "100",
            > 0 and <= 0.15m => "150",
            > 0 and <= 0.2m => "200",
            _ => null,
        };
        return band is null ? null : figures.Quantity("passes-" + machine, (cohesive ? "cohesive-" : "granular-") + band);
    }

    /// <summary>Depth in metres of the warning tape below the surface: the cover less the height of the tape above the duct (row trench-default); null where the cover is not deep enough. Operators differ, from 150 to 250 mm.</summary>
    public static Quantity? TapeDepth(GroundFigures figures, Quantity? cover) =>
        figures.Cover(cover) - figures.In("trench-default", "tape-above", "m") is { } depth and > 0 ? Quantity.Of(depth, "m") : null;
}
