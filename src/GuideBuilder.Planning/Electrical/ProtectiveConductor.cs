namespace GuideBuilder.Planning.Electrical;

/// <summary>What carries the earth-fault current back along a sub-main: a closed set.</summary>
public abstract record ProtectiveConductor
{
    private ProtectiveConductor()
    {
    }

    /// <summary>The thinner conductor in flat twin and earth.</summary>
    public sealed record InFlatCable : ProtectiveConductor;

    /// <summary>The armour of a cable with two or three cores.</summary>
    public sealed record Armour(int Cores) : ProtectiveConductor;

    /// <summary>A core of the cable as big as its live ones, the armour not counted.</summary>
    public sealed record Core : ProtectiveConductor;

    /// <summary>A core and the armour of a three-core cable together.</summary>
    public sealed record CoreAndArmour : ProtectiveConductor;

    /// <summary>A copper conductor of its own beside the cable.</summary>
    public sealed record Beside(Quantity Size) : ProtectiveConductor;

    /// <summary>Its resistance in mΩ/m with the cable at working temperature, or at 20 °C; null where the tables have no figure for that cable.</summary>
    public Quantity? PerMetre(ElectricalFigures figures, Cable cable, bool warm = true)
    {
        var degrees = warm ? cable.Temperature : 20;
        Quantity? Copper(Quantity? size) => size is null ? null : Conductors.Warmed(Conductors.Copper(figures, size), Conductors.WarmCopper(figures, degrees));
        Quantity? Steel(int cores) => cable.IsArmoured ? Conductors.Warmed(Conductors.Armour(figures, cable.Size, cores), Conductors.WarmArmour(figures, degrees)) : null;
        return this switch
        {
            InFlatCable => Copper(InFlat(figures, cable)),
            Armour armour => Steel(armour.Cores),
            Core => Copper(cable.Size),
            CoreAndArmour => Conductors.Beside(Copper(cable.Size), Steel(3)),
            Beside beside => Copper(beside.Size),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Cross-section in mm² that heats in a fault, and the row of its k; null where the tables have no figure. Core and armour together are judged by the core alone, which is the cautious side.</summary>
    public (Quantity? Area, string Row) Heated(ElectricalFigures figures, Cable cable) => this switch
    {
        InFlatCable => (InFlat(figures, cable), "k-copper-core"),
        Armour armour => (Conductors.ArmourArea(figures, cable.Size, armour.Cores), "k-steel-armour"),
        Core or CoreAndArmour => (cable.Size, "k-copper-core"),
        Beside beside => (beside.Size, "k-copper-separate"),
        _ => throw new UnreachableException(),
    };

    private static Quantity? InFlat(ElectricalFigures figures, Cable cable) =>
        cable.Family == CableFamily.FlatTwinAndEarth ? Conductors.OfSize(figures, "core-flat-", cable.Size)?.Find("protective") : null;
}
