namespace GuideBuilder.Planning.Ground;

/// <summary>What the sides of a hole ask for, least first. None of them says that a hole may be entered.</summary>
public enum SideAdvice
{
    /// <summary>The depth is not known.</summary>
    NotKnown,

    /// <summary>Guard it, look at it, keep the heap back; upright sides while nothing moves.</summary>
    LookAndKeepBack,

    /// <summary>Slope the sides back or support them.</summary>
    SlopeOrSupport,

    /// <summary>Slope or support whatever the soil, and nobody alone.</summary>
    NeverAlone,

    /// <summary>Nobody goes in without support put in by a firm, and the operator agrees it.</summary>
    FirmWithSupport,
}

/// <summary>Sides of a hole: upright, sloped or supported. The depths are judged, because the law of Great Britain names none; the slopes are of United States practice. Rows depth-…, slope-caution and soil-….</summary>
public static class Sides
{
    /// <summary>Advice by depth (0 to 6 m) and soil. A soil that is not known counts as loose, and wet or not known to be dry counts as wet. NotKnown outside the range.</summary>
    public static SideAdvice For(GroundFigures figures, Quantity? depth, Soil? soil, bool? wet)
    {
        var d = figures.Depth(depth);
        return d is null ? SideAdvice.NotKnown
            : !(d < Limit(figures, "depth-stop")) ? SideAdvice.FirmWithSupport
            : !(d < Limit(figures, "depth-slope-all")) ? SideAdvice.NeverAlone
            : !(d < Limit(figures, "depth-slope-loose")) && IsLoose(soil, wet) ? SideAdvice.SlopeOrSupport
            : SideAdvice.LookAndKeepBack;
    }

    /// <summary>How far a side goes back for each metre of depth (a plain number): the soil's own, or where it is wet or not known the cautious one if that is flatter. Source: OSHA and EM 385-1-1 slopes, mapped by judgement.</summary>
    public static Quantity? Slope(GroundFigures figures, Soil? soil, bool? wet)
    {
        var caution = figures.Number("slope-caution", "slope");
        return (soil is null ? caution : wet == false ? soil.Slope : soil.Slope.Most(caution)).Of("");
    }

    /// <summary>The angle of that slope from level, in degrees as a plain number. Null outside 0 to 3.</summary>
    public static Quantity? Angle(GroundFigures figures, Quantity? slope) =>
        figures.Slope(slope) is { } s ? ((decimal?)(decimal)(Math.Atan2(1, (double)s) * 180 / Math.PI)).Of("") : null;

    /// <summary>The slope of an angle from level of 5 to 90 degrees; null outside.</summary>
    public static Quantity? OfAngle(GroundFigures figures, Quantity? degrees) =>
        figures.Angle(degrees) is { } angle ? angle == 90 ? Quantity.Number(0) : ((decimal?)1).Over(((decimal?)angle).Tangent()).Of("") : null;

    /// <summary>Whether sloped sides fit between the hole and the nearest wall, garden wall or outbuilding; null while something is not known.</summary>
    public static bool? Fits(GroundFigures figures, Quantity? depth, Quantity? slope, Quantity? footingDistance) =>
        figures.Slope(slope) * figures.Depth(depth) is { } back && figures.Distance(footingDistance) is { } there ? back <= there : null;

    private static decimal? Limit(GroundFigures figures, string row) => figures.In(row, "depth", "m");

    private static bool IsLoose(Soil? soil, bool? wet) => soil is not { Stands: true } || wet != false;
}
