namespace GuideBuilder.Planning.Electrical;

/// <summary>Where a home's earth comes from.</summary>
public enum EarthingSystem
{
    /// <summary>Nobody has said.</summary>
    NotKnown,

    /// <summary>The network's combined neutral and earth (TN-C-S, PME).</summary>
    Combined,

    /// <summary>The network's separate earth, such as the cable's sheath (TN-S).</summary>
    Separate,

    /// <summary>A rod in the home's own ground (TT).</summary>
    OwnRod,
}
