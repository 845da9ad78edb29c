namespace GuideBuilder.Planning.Electrical;

/// <summary>Something that draws current: a name, its kind, its current in amps (per phase when it stands on all), whether its control unit has a socket (cooking), and where it stands.</summary>
public sealed record Load(string Name, LoadKind Kind, Quantity Current, bool WithSocket = false, Line Line = Line.First);

/// <summary>On which live conductor a load stands.</summary>
public enum Line
{
    /// <summary>The first, or the only one.</summary>
    First,

    /// <summary>The second.</summary>
    Second,

    /// <summary>The third.</summary>
    Third,

    /// <summary>All three alike.</summary>
    All,
}

/// <summary>Kinds of load that diversity treats alike.</summary>
public enum LoadKind
{
    /// <summary>Fixed lighting.</summary>
    Lighting,

    /// <summary>Heating and power on general circuits.</summary>
    Heating,

    /// <summary>Ovens and hobs.</summary>
    Cooking,

    /// <summary>Motors.</summary>
    Motor,

    /// <summary>Water heated as it flows, such as an electric shower.</summary>
    InstantWater,

    /// <summary>Stored water under a thermostat.</summary>
    StoredWater,

    /// <summary>Warmed floors.</summary>
    FloorWarming,

    /// <summary>Storage heaters.</summary>
    StorageHeating,

    /// <summary>Ring and radial circuits of the standard patterns.</summary>
    StandardCircuit,

    /// <summary>Other socket circuits and stationary equipment.</summary>
    OtherSocket,

    /// <summary>Car chargers.</summary>
    Charger,

    /// <summary>Heat pumps, with their back-up element.</summary>
    HeatPump,

    /// <summary>Batteries while they charge.</summary>
    Battery,
}

/// <summary>The column of the diversity table.</summary>
public enum Premises
{
    /// <summary>A single household.</summary>
    Household,

    /// <summary>A small shop or office.</summary>
    Shop,

    /// <summary>A small hotel or guest house.</summary>
    Hotel,
}
