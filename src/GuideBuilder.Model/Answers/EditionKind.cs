namespace GuideBuilder.Model;

/// <summary>For whom a handbook is bound.</summary>
public enum EditionKind
{
    /// <summary>The people who live there: everything.</summary>
    Householder,

    /// <summary>A neighbour on the loop or the route: only what concerns them.</summary>
    Neighbour,

    /// <summary>Anybody: no personal data and no calendar dates.</summary>
    Public,

    /// <summary>An installer's customer: with the installer's imprint.</summary>
    Customer,
}
