namespace GuideBuilder.Planning.Ground;

/// <summary>Sizes of the joint hole. length and width are the clear size at the bottom, so a hole with sloped sides keeps it there. All of it counts, whoever digs it. Geometry.</summary>
public static class JointHole
{
    /// <summary>Depth in metres to dig for: cover, plus the cable's width, plus the clear gap below it. Null outside cover 0 to 3 m, cable 5 to 200 mm, gap 0 to 1 m. To count the spoil, not to dig by: the cable may lie at any depth.</summary>
    public static Quantity? Depth(GroundFigures figures, Quantity? cover, Quantity? cable, Quantity? gap) =>
        (figures.Cover(cover) + figures.Diameter(cable) + figures.Gap(gap)).Of("m");

    /// <summary>The cover in metres with which a hole comes to that depth; null outside the ranges or where there is none.</summary>
    public static Quantity? CoverFor(GroundFigures figures, Quantity? depth, Quantity? cable, Quantity? gap) =>
        figures.Depth(depth) - figures.Diameter(cable) - figures.Gap(gap) is { } cover and >= 0 ? Quantity.Of(cover, "m") : null;

    /// <summary>Volume in the ground, in m³, with upright sides. Null outside sides 0.3 to 10 m, depth 0 to 6 m.</summary>
    public static Quantity? Volume(GroundFigures figures, Quantity? length, Quantity? width, Quantity? depth) =>
        (figures.Side(length) * figures.Side(width) * figures.Depth(depth)).Of("m³");

    /// <summary>Volume in the ground, in m³, with all four sides sloped back (0 to 3 metres a metre): a prismoid, exact. Null outside the ranges.</summary>
    public static Quantity? SlopedVolume(GroundFigures figures, Quantity? length, Quantity? width, Quantity? depth, Quantity? slope)
    {
        var (a, b, d) = (figures.Side(length), figures.Side(width), figures.Depth(depth));
        var back = figures.Slope(slope) * d;
        return (d * ((a * b) + (back * (a + b)) + (4 * back * back / 3))).Of("m³");
    }

    /// <summary>Volume in m³ with one or two opposite sides of the length sloped back. Null outside the ranges.</summary>
    public static Quantity? PartlySlopedVolume(GroundFigures figures, Quantity? length, Quantity? width, Quantity? depth, Quantity? slope, int sides)
    {
        var d = figures.Depth(depth);
        return sides is 1 or 2 ? (figures.Side(width) * d * (figures.Side(length) + (sides * figures.Slope(slope) * d / 2))).Of("m³") : null;
    }

    /// <summary>The side at the top in metres when both ends of it slope back. Null outside the ranges.</summary>
    public static Quantity? Top(GroundFigures figures, Quantity? side, Quantity? depth, Quantity? slope) =>
        (figures.Side(side) + (2 * figures.Slope(slope) * figures.Depth(depth))).Of("m");

    /// <summary>Area in m² that a hole of upright sides opens. Null outside the ranges.</summary>
    public static Quantity? Surface(GroundFigures figures, Quantity? length, Quantity? width) => (figures.Side(length) * figures.Side(width)).Of("m²");
}
