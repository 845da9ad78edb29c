namespace GuideBuilder.Planning.Electrical;

/// <summary>A family of cables with copper conductors.</summary>
public enum CableFamily
{
    /// <summary>Single-core meter tails, PVC, 70 °C.</summary>
    Tails,

    /// <summary>Flat twin and earth, PVC, 70 °C, with a thinner protective conductor.</summary>
    FlatTwinAndEarth,

    /// <summary>Steel-wire armoured, rated for terminals of 70 °C.</summary>
    Armoured70,

    /// <summary>Steel-wire armoured, rated for terminals of 90 °C.</summary>
    Armoured90,
}

/// <summary>How a cable is laid, by the letters and numbers of BS 7671.</summary>
public enum LayingMethod
{
    /// <summary>In conduit in an insulated wall.</summary>
    A,

    /// <summary>In conduit or trunking on a wall.</summary>
    B,

    /// <summary>Clipped direct.</summary>
    C,

    /// <summary>In the ground or in a duct in it.</summary>
    D,

    /// <summary>In free air.</summary>
    E,

    /// <summary>100: in a ceiling, under insulation up to 100 mm thick.</summary>
    CeilingThinlyInsulated,

    /// <summary>101: in a ceiling, under thicker insulation.</summary>
    CeilingThicklyInsulated,

    /// <summary>102: in an insulated stud wall, touching its face.</summary>
    StudTouching,

    /// <summary>103: in an insulated stud wall, not touching its face.</summary>
    StudNotTouching,
}

/// <summary>A cable: its family and the cross-section of its live conductors.</summary>
public sealed record Cable(CableFamily Family, Quantity Size)
{
    /// <summary>Working temperature of the conductors in °C: 70 or 90.</summary>
    public int Temperature => Family == CableFamily.Armoured90 ? 90 : 70;

    /// <summary>Whether the cable has steel wires around it.</summary>
    public bool IsArmoured => Family is CableFamily.Armoured70 or CableFamily.Armoured90;

    /// <summary>The sizes of a family for which the table has ratings, smallest first.</summary>
    public static ImmutableArray<Cable> Sizes(ElectricalFigures figures, CableFamily family) =>
        [.. figures.Group($"rating-{Id(family)}-").Select(r => r.Find("size")).OfType<Quantity>().DistinctBy(q => q.Base).OrderBy(q => q.Base).Select(size => new Cable(family, size))];

    /// <summary>Current in amps that it carries laid in that way, before factors; null where the table has none.</summary>
    public Quantity? Rating(ElectricalFigures figures, LayingMethod method, Phases phases) =>
        OfThisSize(figures, "rating").Select(r => r.Find($"{Id(method)}-{phases.Cell()}")).FirstOrDefault(q => q is not null);

    /// <summary>Voltage drop in mΩ/m, which is the mV/A/m of the tables; null where there is none.</summary>
    public Quantity? Drop(ElectricalFigures figures, Phases phases) => OfThisSize(figures, "drop").Select(r => r.Find(phases.Cell())).FirstOrDefault(q => q is not null);

    /// <summary>The rows of the table about cables of this family and size, of that kind.</summary>
    internal IEnumerable<TableRow> OfThisSize(ElectricalFigures figures, string kind) =>
        figures.Group($"{kind}-{Id(Family)}-").Where(r => r.Find("size")?.Base == Size.Base);

    private static string Id(CableFamily family) => family switch
    {
        CableFamily.Tails => "tails",
        CableFamily.FlatTwinAndEarth => "flat",
        CableFamily.Armoured70 => "armoured-70",
        CableFamily.Armoured90 => "armoured-90",
        _ => throw new UnreachableException(),
    };

    private static string Id(LayingMethod method) => method switch
    {
        LayingMethod.A => "a",
        LayingMethod.B => "b",
        LayingMethod.C => "c",
        LayingMethod.D => "d",
        LayingMethod.E => "e",
        LayingMethod.CeilingThinlyInsulated => "100",
        LayingMethod.CeilingThicklyInsulated => "101",
        LayingMethod.StudTouching => "102",
        LayingMethod.StudNotTouching => "103",
        _ => throw new UnreachableException(),
    };
}
