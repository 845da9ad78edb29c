namespace GuideBuilder.Model;

/// <summary>Indicative figures for the hole and the trench, in the assumed world where an answer is missing, for whoever digs and for room for the spoil. The assumed cover is there to count the spoil, not to dig by.</summary>
public sealed record GroundSheet(ImmutableArray<SheetRow> Rows, CablePosition Cable, ImmutableArray<TableRow> Stops);

/// <summary>How a drawing may show the cable.</summary>
public enum CablePosition
{
    /// <summary>A hatched band across the whole hole, from the surface down: somewhere in here, at any depth. Never one line and never one depth.</summary>
    SomewhereInHere,

    /// <summary>Where the operator itself has laid it bare, because the answers say so.</summary>
    AsExposed,
}
