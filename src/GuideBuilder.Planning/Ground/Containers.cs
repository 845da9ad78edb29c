namespace GuideBuilder.Planning.Ground;

/// <summary>Which skip would take the spoil: the row of the smallest that does, or none when it takes more than one, or when the soil must be asked about first.</summary>
public sealed record SkipChoice(TableRow? Skip);

/// <summary>Barrows, bags and skips: volume or mass, whichever bites. Source: skip hirers' and sellers' own figures, rows barrow, bulk-bag, skip-….</summary>
public static class Containers
{
    /// <summary>Barrow loads for a loose volume and a mass. Null outside 0 to 10,000 m³.</summary>
    public static Quantity? Barrows(GroundFigures figures, Quantity? loose, Quantity? mass) => Fill(figures, "barrow", loose, mass);

    /// <summary>Bulk bags for a loose volume and a mass. Null outside 0 to 10,000 m³.</summary>
    public static Quantity? Bags(GroundFigures figures, Quantity? loose, Quantity? mass) => Fill(figures, "bulk-bag", loose, mass);

    /// <summary>Merchant's bags of sand for a volume to order. Null outside 0 to 10,000 m³.</summary>
    public static Quantity? SandBags(GroundFigures figures, Quantity? toOrder) => Loads(figures, toOrder, figures.Quantity("sand-bag", "volume"));

    /// <summary>Loads of that capacity for a volume: whole ones. Null outside 0 to 10,000 m³ or without capacity.</summary>
    public static Quantity? Loads(GroundFigures figures, Quantity? volume, Quantity? capacity) =>
        figures.CubicMetres(volume).Over(figures.CubicMetres(capacity)).Up().Of("");

    /// <summary>The smallest skip that takes the loose volume with the margin of row skip-margin, level, and the mass. Skips that hirers do not offer for soil without asking are left out. Null if an input is outside its range.</summary>
    public static SkipChoice? Skip(GroundFigures figures, Quantity? loose, Quantity? mass)
    {
        var (volume, kilograms) = (figures.CubicMetres(loose) * figures.Number("skip-margin", "factor"), figures.Kilograms(mass));
        return volume is null || kilograms is null
            ? null
            : new(figures.Group("skip-").FirstOrDefault(r => r.Words("offer") == "yes" && r.In("volume", "m³") >= volume && r.In("mass", "kg") >= kilograms));
    }

    /// <summary>Mass in kg of a container filled level with a soil of that loose mass of a cubic metre (300 to 4,000 kg); null outside.</summary>
    public static Quantity? Filled(GroundFigures figures, Quantity? capacity, Quantity? looseCubicMetre) =>
        (figures.CubicMetres(capacity) * figures.Density(looseCubicMetre)).Of("kg");

    private static Quantity? Fill(GroundFigures figures, string row, Quantity? loose, Quantity? mass) =>
        figures.CubicMetres(loose).Over(figures.In(row, "volume", "m³")).Most(figures.Kilograms(mass).Over(figures.In(row, "mass", "kg"))).Up().Of("");
}
