namespace GuideBuilder.Planning.Ground;

/// <summary>Inputs held against the ranges of the table (rows range-…): outside them, or of another dimension, an input counts as not known.</summary>
internal static class Sensible
{
    internal static decimal? Cover(this GroundFigures figures, Quantity? cover) => figures.Within("cover", cover, "m");

    internal static decimal? Diameter(this GroundFigures figures, Quantity? diameter) => figures.Within("cable", diameter, "m");

    internal static decimal? Gap(this GroundFigures figures, Quantity? gap) => figures.Within("gap", gap, "m");

    internal static decimal? Side(this GroundFigures figures, Quantity? side) => figures.Within("side", side, "m");

    internal static decimal? Depth(this GroundFigures figures, Quantity? depth) => figures.Within("depth", depth, "m");

    internal static decimal? Slope(this GroundFigures figures, Quantity? slope) => figures.Within("slope", slope, "");

    internal static decimal? Angle(this GroundFigures figures, Quantity? degrees) => figures.Within("angle", degrees, "");

    internal static decimal? Length(this GroundFigures figures, Quantity? length) => figures.Within("length", length, "m");

    internal static decimal? Width(this GroundFigures figures, Quantity? width) => figures.Within("width", width, "m");

    internal static decimal? Thickness(this GroundFigures figures, Quantity? thickness) => figures.Within("thickness", thickness, "m");

    internal static decimal? CubicMetres(this GroundFigures figures, Quantity? volume) => figures.Within("volume", volume, "m³");

    internal static decimal? Kilograms(this GroundFigures figures, Quantity? mass) => figures.Within("mass", mass, "kg");

    internal static decimal? SquareMetres(this GroundFigures figures, Quantity? area) => figures.Within("area", area, "m²");

    internal static decimal? Density(this GroundFigures figures, Quantity? ofACubicMetre) => figures.Within("density", ofACubicMetre, "kg");

    internal static decimal? Packing(this GroundFigures figures, Quantity? packing) => figures.Within("packing", packing, "");

    internal static decimal? Factor(this GroundFigures figures, Quantity? factor) => figures.Within("factor", factor, "");

    internal static decimal? Hours(this GroundFigures figures, Quantity? hours) => figures.Within("hours", hours, "hours");

    internal static decimal? Distance(this GroundFigures figures, Quantity? distance) => figures.Within("distance", distance, "m");

    internal static decimal? Girth(this GroundFigures figures, Quantity? girth) => figures.Within("girth", girth, "m");

    internal static decimal? Rain(this GroundFigures figures, Quantity? rain) => figures.Within("rain", rain, "m");
}
