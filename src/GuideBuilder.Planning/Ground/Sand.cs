namespace GuideBuilder.Planning.Ground;

/// <summary>Sand or fine fill round a duct or a cable, packed. Geometry; thickness by row bed, material by row sand-material.</summary>
public static class Sand
{
    /// <summary>Volume in m³ in a trench: from the bed below the duct to the cover above it, less the duct. Null outside the ranges of <see cref="Trench"/>.</summary>
    public static Quantity? InTrench(GroundFigures figures, Quantity? length, Quantity? width, Quantity? below, Quantity? duct, Quantity? above)
    {
        var across = figures.Diameter(duct);
        return (figures.Length(length) * ((figures.Width(width) * (figures.Thickness(below) + across + figures.Thickness(above))) - across.Circle())).NotUnderZero().Of("m³");
    }

    /// <summary>Height in metres of the sand in a joint hole: the gap, the cable, and the cover of sand above it. Null outside the ranges.</summary>
    public static Quantity? HeightInHole(GroundFigures figures, Quantity? gap, Quantity? cable, Quantity? above) =>
        (figures.Gap(gap) + figures.Diameter(cable) + figures.Thickness(above)).Of("m");

    /// <summary>Volume in m³ in a joint hole: the sand's height over the bottom, less the cable that runs along the length. Null outside the ranges of <see cref="JointHole"/>.</summary>
    public static Quantity? InHole(GroundFigures figures, Quantity? length, Quantity? width, Quantity? gap, Quantity? cable, Quantity? above) =>
        ((figures.Side(length) * figures.Side(width) * HeightInHole(figures, gap, cable, above)?.Base) - (figures.Diameter(cable).Circle() * figures.Side(length))).Of("m³");

    /// <summary>Loose volume in m³ to order for a packed one: grown by its bulking, over its packing. Null outside 0 to 10,000 m³.</summary>
    public static Quantity? ToOrder(GroundFigures figures, Quantity? packed) =>
        (figures.CubicMetres(packed) * (1 + figures.Row("sand-material").Share("bulking"))).Over(figures.Number("sand-material", "packing")).Of("m³");

    /// <summary>Mass in kg of a loose volume of sand as it is delivered. Null outside 0 to 10,000 m³.</summary>
    public static Quantity? Mass(GroundFigures figures, Quantity? loose) => (figures.CubicMetres(loose) * figures.In("sand-material", "cubic-metre-loose", "kg")).Of("kg");
}
