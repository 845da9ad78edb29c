namespace GuideBuilder.Planning.Electrical;

/// <summary>Resistances of conductors and armour. Source: IEC 60228 and makers' figures, in rows conductor-…, aluminium-…, armour-… and warm-….</summary>
public static class Conductors
{
    /// <summary>Greatest resistance at 20 °C of a plain copper conductor of class 1 or 2, in mΩ/m; null for sizes not in the table.</summary>
    public static Quantity? Copper(ElectricalFigures figures, Quantity size) => OfSize(figures, "conductor-", size)?.Find("copper");

    /// <summary>Resistance at 20 °C of the armour of a copper cable with two or three cores, in mΩ/m.</summary>
    public static Quantity? Armour(ElectricalFigures figures, Quantity size, int cores) => OfSize(figures, Invariant($"armour-resistance-{cores}-"), size)?.Find("resistance");

    /// <summary>Cross-section of that armour, in mm².</summary>
    public static Quantity? ArmourArea(ElectricalFigures figures, Quantity size, int cores) => OfSize(figures, Invariant($"armour-area-{cores}-"), size)?.Find("area");

    /// <summary>How much more copper resists at that many °C (10, 20, 30, 70 or 90) than at 20; by rows, null for other temperatures.</summary>
    public static decimal? WarmCopper(ElectricalFigures figures, int degrees) => figures.Number(Invariant($"warm-copper-{degrees}"), "factor");

    /// <summary>How much more armour resists round conductors of that many °C (20, 70 or 90).</summary>
    public static decimal? WarmArmour(ElectricalFigures figures, int conductor) => figures.Number(Invariant($"warm-armour-{conductor}"), "factor");

    /// <summary>The two in parallel, in mΩ/m; null if either is.</summary>
    public static Quantity? Beside(Quantity? one, Quantity? other)
    {
        var (a, b) = (one?.AmountIn("mΩ/m"), other?.AmountIn("mΩ/m"));
        return (a * b).Over(a + b).Of("mΩ/m");
    }

    /// <summary>A resistance warmed by a factor.</summary>
    public static Quantity? Warmed(Quantity? perMetre, decimal? factor) => (perMetre?.AmountIn("mΩ/m") * factor).Of("mΩ/m");

    /// <summary>The smallest standard size that is not less, in mm²; null above the largest in the table (rows size-…) or outside 0.5 to 400 mm².</summary>
    public static Quantity? StandardSize(ElectricalFigures figures, Quantity atLeast) =>
        figures.SquareMillimetres(atLeast) is { } mm ? figures.Group("size-").Select(r => r.Find("size")).FirstOrDefault(s => s?.AmountIn("mm²") >= mm) : null;

    /// <summary>How much copper conducts as well as that much steel armour, by the resistivities of the table; and the other way.</summary>
    public static Quantity? ArmourEqualTo(ElectricalFigures figures, Quantity copper) =>
        (figures.SquareMillimetres(copper) * figures.Number("resistivity-steel-armour", "resistivity")).Over(figures.Number("resistivity-copper", "resistivity")).Of("mm²");

    internal static TableRow? OfSize(ElectricalFigures figures, string rows, Quantity size) => figures.Group(rows).FirstOrDefault(r => r.Find("size")?.Base == size.Base);
}
