namespace GuideBuilder.Planning.Ground;

/// <summary>Distances from footings, trees and bends. Each is a habit of the trade, and the owner's own figure outranks it.</summary>
public static class Clearances
{
    /// <summary>Distance in metres from the face of a footing at which a hole stays above the line that falls at 45 degrees from the footing's base (0 to 6 m down); never less than nothing. Null outside.</summary>
    public static Quantity? FromFooting(GroundFigures figures, Quantity? depth, Quantity? footingBase) =>
        (figures.Depth(depth) - figures.Depth(footingBase)).NotUnderZero().Of("m");

    /// <summary>Radius in metres round a tree within which only hands dig: four times the girth of its trunk (0 to 20 m). Source: National Joint Utilities Group, row trees.</summary>
    public static Quantity? HandDigging(GroundFigures figures, Quantity? girth) => (figures.Girth(girth) * figures.Number("trees", "girths")).Of("m");

    /// <summary>Tightest bend in metres for a cable of that width (5 to 200 mm), by row bend-plastic or bend-lead. Null outside.</summary>
    public static Quantity? Bend(GroundFigures figures, string row, Quantity? cable) => (figures.Diameter(cable) * figures.Number(row, "times")).Of("m");

    /// <summary>Whether an opening counts as a small one in any street; null outside 0 to 10,000 m².</summary>
    public static bool? IsSmallOpening(GroundFigures figures, Quantity? area) =>
        figures.SquareMetres(area) is { } opened && figures.In("small-opening", "most", "m²") is { } most ? opened <= most : null;
}
