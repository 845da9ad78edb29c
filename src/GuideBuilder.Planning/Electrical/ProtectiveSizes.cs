namespace GuideBuilder.Planning.Electrical;

/// <summary>Sizes of earthing and bonding conductors, copper, in mm². Source: BS 7671 tables 54.7 and 54.8 and regulation 544.1.1, in rows protective-… and bonding-….</summary>
public static class ProtectiveSizes
{
    /// <summary>Protective conductor for live conductors of that size (0.5 to 400 mm²) of the same metal, by table 54.7. Null outside.</summary>
    public static Quantity? ByTable(ElectricalFigures figures, Quantity live)
    {
        var (size, same, most) = (figures.SquareMillimetres(live), figures.In("protective-size", "same-up-to", "mm²"), figures.In("protective-size", "fixed-up-to", "mm²"));
        return size is null || same is null || most is null ? null
            : size <= same ? size.Of("mm²")
            : size <= most ? figures.Quantity("protective-size", "fixed")
            : (size * figures.Share("protective-size", "share-above")).Of("mm²");
    }

    /// <summary>Protective conductor of another metal, by table 54.7 times k1 / k2: rows k-… of the live conductor and of the protective one, for insulation of 70 or 90 °C.</summary>
    public static Quantity? ByTableOf(ElectricalFigures figures, Quantity live, string liveRow, string protectiveRow, int insulation) =>
        (ByTable(figures, live)?.AmountIn("mm²") * Adiabatic.K(figures, liveRow, insulation)).Over(Adiabatic.K(figures, protectiveRow, insulation)).Of("mm²");

    /// <summary>Main bonding under combined earthing, by the supply's neutral as copper, table 54.8. Null outside 0.5 to 400 mm².</summary>
    public static Quantity? BondingCombined(ElectricalFigures figures, Quantity neutral) =>
        figures.SquareMillimetres(neutral) is { } size
            ? figures.Group("bonding-combined-").FirstOrDefault(r => r.In("neutral-up-to", "mm²") is not { } upTo || size <= upTo)?.Find("bond")
            : null;

    /// <summary>Main bonding under separate earthing or an own rod: half the earthing conductor, the next standard size up, not less than 6 and not more than 25 mm² (row bonding-separate).</summary>
    public static Quantity? BondingSeparate(ElectricalFigures figures, Quantity earthing)
    {
        var half = figures.SquareMillimetres(earthing) * figures.Share("bonding-separate", "share");
        var (least, most) = (figures.In("bonding-separate", "least", "mm²"), figures.In("bonding-separate", "most", "mm²"));
        return half is { } h && least is { } low && most is { } high ? Conductors.StandardSize(figures, Quantity.Of(Math.Clamp(h, low, high), "mm²")) : null;
    }

    /// <summary>Main bonding for an earthing system; null while that is not known.</summary>
    public static Quantity? Bonding(ElectricalFigures figures, EarthingSystem system, Quantity neutral, Quantity earthing) => system switch
    {
        EarthingSystem.Combined => BondingCombined(figures, neutral),
        EarthingSystem.Separate or EarthingSystem.OwnRod => BondingSeparate(figures, earthing),
        _ => null,
    };

    /// <summary>The main earthing conductor for tails of that size: table 54.7, and under combined earthing not less than the main bonding. Null while the system is not known.</summary>
    public static Quantity? Earthing(ElectricalFigures figures, EarthingSystem system, Quantity tails) => (system, ByTable(figures, tails)) switch
    {
        (EarthingSystem.NotKnown, _) or (_, null) => null,
        (EarthingSystem.Combined, { } byTable) => BondingCombined(figures, tails) is { } bond ? new[] { byTable, bond }.MaxBy(q => q.Base) : null,
        (_, { } byTable) => byTable,
    };
}
