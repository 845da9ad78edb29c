namespace GuideBuilder.Planning.Ground;

/// <summary>A heap: how wide it stands (the radius for a cone) and how high, in metres.</summary>
public sealed record HeapSize(Quantity Width, Quantity Height);

/// <summary>Room for the spoil. Geometry, with angles of repose of rows soil-…. Never a reason for a steep side.</summary>
public static class Heap
{
    /// <summary>A ridge of that length (up to 500 m) of loose soil that stands at an angle of 5 to 90 degrees: its width and height. Null outside the ranges or without length.</summary>
    public static HeapSize? Ridge(GroundFigures figures, Quantity? loose, Quantity? length, Quantity? repose)
    {
        var tangent = figures.Angle(repose).Tangent();
        var half = figures.CubicMetres(loose).Over(figures.Length(length) * tangent).Root();
        return Of(2 * half, half * tangent);
    }

    /// <summary>A cone of loose soil that stands at an angle of 5 to 90 degrees: its radius and height. Null outside the ranges.</summary>
    public static HeapSize? Cone(GroundFigures figures, Quantity? loose, Quantity? repose)
    {
        var tangent = figures.Angle(repose).Tangent();
        var radius = (3 * figures.CubicMetres(loose)).Over(tangent * decimal.Round((decimal)Math.PI, 12)).CubeRoot();
        return Of(radius, radius * tangent);
    }

    /// <summary>How far in metres the foot of the heap stands back from the edge: as far as the hole is deep, and at least row set-back-default. In a tight garden a shallow hole may have less, row set-back-tight. Null outside 0 to 6 m.</summary>
    public static Quantity? SetBack(GroundFigures figures, Quantity? depth, bool tight = false)
    {
        var d = figures.Depth(depth);
        var row = tight && d < figures.In("set-back-tight", "only-under", "m") ? "set-back-tight" : "set-back-default";
        return figures.In(row, "least", "m").Most(d).Of("m");
    }

    private static HeapSize? Of(decimal? width, decimal? height) => width.Of("m") is { } w && height.Of("m") is { } h ? new(w, h) : null;
}
