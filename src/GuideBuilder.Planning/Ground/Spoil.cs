namespace GuideBuilder.Planning.Ground;

/// <summary>A layer of ground as it lies: its soil and its volume.</summary>
public sealed record Layer(Soil Soil, Quantity Volume);

/// <summary>Soil out of the ground: how much it grows, and what it weighs. Its mass follows from the volume in the ground, never from the loose one.</summary>
public static class Spoil
{
    /// <summary>Loose volume in m³ of layers dug out; null if one volume is outside 0 to 10,000 m³. Source: bulking tables, rows soil-….</summary>
    public static Quantity? Loose(GroundFigures figures, params IEnumerable<Layer> layers) => Sum(layers, l => figures.CubicMetres(l.Volume) * (1 + l.Soil.Bulking)).Of("m³");

    /// <summary>Mass in kg of layers dug out; null if one volume is outside 0 to 10,000 m³. Show it with the share of row uncertainty either way.</summary>
    public static Quantity? Mass(GroundFigures figures, params IEnumerable<Layer> layers) => Sum(layers, l => figures.CubicMetres(l.Volume) * l.Soil.Mass).Of("kg");

    /// <summary>Mass in kg of a cubic metre when loose.</summary>
    public static Quantity? LooseCubicMetre(Soil soil) => soil.Mass.Over(1 + soil.Bulking).Of("kg");

    /// <summary>Loose volume in m³ of a volume in the ground that grows by 0 to 150 %; null outside.</summary>
    public static Quantity? Grown(GroundFigures figures, Quantity? volume, Quantity? bulking) =>
        (figures.CubicMetres(volume) * (1 + (figures.Within("bulking", bulking, "%") / 100))).Of("m³");

    /// <summary>Bulking in % from the masses of a cubic metre in the ground and loose (300 to 4,000 kg). Null outside.</summary>
    public static Quantity? Bulking(GroundFigures figures, Quantity? inGround, Quantity? loose) =>
        ((figures.Density(inGround).Over(figures.Density(loose)) - 1) * 100).Of("%");

    /// <summary>Packed over in-ground volume, from the masses of a cubic metre in the ground and packed (300 to 4,000 kg). Null outside.</summary>
    public static Quantity? Packing(GroundFigures figures, Quantity? inGround, Quantity? packed) =>
        figures.Density(inGround).Over(figures.Density(packed)).Of("");

    /// <summary>Volume in the ground, in m³, that packs to a volume: divided by the packing (0.5 to 2). Null outside.</summary>
    public static Quantity? ToFill(GroundFigures figures, Quantity? volume, Quantity? packing) =>
        figures.CubicMetres(volume).Over(figures.Packing(packing)).Of("m³");

    /// <summary>What is over, as a volume in the ground in m³: what was dug less what goes back by its packing; never less than nothing. Null outside the ranges.</summary>
    public static Quantity? Surplus(GroundFigures figures, Quantity? dug, Quantity? ownBack, Quantity? packing) =>
        (figures.CubicMetres(dug) - figures.CubicMetres(ownBack).Over(figures.Packing(packing))).NotUnderZero().Of("m³");

    private static decimal? Sum(IEnumerable<Layer> layers, Func<Layer, decimal?> worth) => layers.Aggregate((decimal?)0, (sum, layer) => sum + worth(layer));
}
