namespace GuideBuilder.Planning.Ground;

/// <summary>The trench for the duct.</summary>
public static class Trench
{
    /// <summary>Depth in metres: cover, plus the duct's outside width, plus the bed. Null outside cover 0 to 3 m, duct 5 to 200 mm, bed 0 to 1 m. Source: a published rule of Scottish and Southern Electricity Networks.</summary>
    public static Quantity? Depth(GroundFigures figures, Quantity? cover, Quantity? duct, Quantity? bed) =>
        (figures.Cover(cover) + figures.Diameter(duct) + figures.Thickness(bed)).Of("m");

    /// <summary>Volume in the ground, in m³, of a trench of upright sides. Null outside length 0 to 500 m, width 0.05 to 3 m, depth 0 to 6 m.</summary>
    public static Quantity? Volume(GroundFigures figures, Quantity? length, Quantity? width, Quantity? depth) =>
        (figures.Length(length) * figures.Width(width) * figures.Depth(depth)).Of("m³");

    /// <summary>Area in m² that the trench opens. Null outside the ranges.</summary>
    public static Quantity? Surface(GroundFigures figures, Quantity? length, Quantity? width) => (figures.Length(length) * figures.Width(width)).Of("m²");
}
