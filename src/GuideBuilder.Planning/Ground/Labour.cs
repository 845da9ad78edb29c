namespace GuideBuilder.Planning.Ground;

/// <summary>What is dug: a small pit such as the joint hole, or a trench.</summary>
public enum Dig
{
    /// <summary>A pit of up to about two square metres.</summary>
    Pit,

    /// <summary>A trench.</summary>
    Trench,
}

/// <summary>Hours of hand work on open ground. Source: Planning Planet's hand labour outputs, rows soil-… and barrow-…; other published tables differ by about 1.6 times, so show a range.</summary>
public static class Labour
{
    /// <summary>Hours that one practised labourer digs at a volume in the ground, by soil and depth (0 to 3 m). Null outside the ranges.</summary>
    public static Quantity? DigHours(GroundFigures figures, Quantity? volume, Soil? soil, Dig what, Quantity? depth)
    {
        var d = figures.Depth(depth);
        var cell = what switch
        {
            Dig.Pit => "pit",
            Dig.Trench => "trench",
            _ => throw new UnreachableException(),
        };
        var rate = d <= figures.In("pit-shallow", "depth", "m") ? soil?.Row.In(cell, "m³") : d <= 2 * figures.In("pit-shallow", "depth", "m") ? soil?.Row.In(cell + "-deep", "m³") : null;
        return figures.CubicMetres(volume).Over(rate).Of("hours");
    }

    /// <summary>Hours of work at a published rate of hours for a cubic metre. Null outside 0 to 10,000.</summary>
    public static Quantity? AtRate(GroundFigures figures, Quantity? volume, Quantity? hoursForACubicMetre) =>
        (figures.CubicMetres(volume) * figures.Hours(hoursForACubicMetre)).Of("hours");

    /// <summary>Hours of barrowing loose soil a distance of 0 to 50 m; null outside.</summary>
    public static Quantity? BarrowHours(GroundFigures figures, Quantity? loose, Quantity? distance)
    {
        var away = figures.Distance(distance);
        var band = figures.Group("barrow-").FirstOrDefault(r => away <= r.In("up-to", "m"));
        return figures.CubicMetres(loose).Over(band.In("rate", "m³")).Of("hours");
    }

    /// <summary>Hours of filling from the side and packing in thin layers by hand; null outside 0 to 10,000 m³.</summary>
    public static Quantity? FillHours(GroundFigures figures, Quantity? volume, Soil? soil) => figures.CubicMetres(volume).Over(soil?.Row.In("fill", "m³")).Of("hours");

    /// <summary>Hours times factors of 0.2 to 10, such as that of a person (rows person-…) or of care (rows care-…). Null if one is outside.</summary>
    public static Quantity? Times(GroundFigures figures, Quantity? hours, params IEnumerable<Quantity?> factors) =>
        factors.Aggregate(figures.Hours(hours), (product, factor) => product * figures.Factor(factor)).Of("hours");

    /// <summary>Hours by the clock: only one person digs in a small hole, so a helper who barrows saves the barrowing that the digging covers. Null outside 0 to 10,000 hours.</summary>
    public static Quantity? Elapsed(GroundFigures figures, Quantity? dig, Quantity? barrow, bool helper)
    {
        var (digging, barrowing) = (figures.Hours(dig), figures.Hours(barrow));
        return (digging + (helper ? (barrowing - digging).NotUnderZero() : barrowing)).Of("hours");
    }
}
