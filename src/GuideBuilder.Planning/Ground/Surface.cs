namespace GuideBuilder.Planning.Ground;

/// <summary>What covers the ground, as its row surface-… has it: what is laid aside and laid again, what is broken up and goes away, and the bed below it that is dug like a soil of its own. All in metres.</summary>
public sealed record Surface(TableRow Row)
{
    private decimal Aside => Row.In("laid-aside", "m") ?? 0;

    private decimal Broken => Row.In("broken", "m") ?? 0;

    private decimal Base => Row.In("base", "m") ?? 0;

    /// <summary>The surface whose row stands for the answers; that of open ground where nobody was asked; null while none is known.</summary>
    public static Surface? Answered(GroundFigures figures, Lookup lookup, bool asked) =>
        (asked ? figures.Group("surface-").FirstOrDefault(r => r.When is { } when && Judge.Of(when, lookup).Truth == Truth.Holds) : figures.Row("surface-none")) is { } row ? new(row) : null;

    /// <summary>A cut of that area (m²) and depth (m) through the surface, its bed and the soil below. Null outside the ranges or while an input is not known.</summary>
    public Cut? Through(GroundFigures figures, Quantity? area, Quantity? depth, Soil? soil)
    {
        if (figures.SquareMetres(area) is not { } opened || figures.Depth(depth) is not { } deep)
        {
            return null;
        }

        var aside = Math.Min(Aside, deep);
        var broken = Math.Min(Broken, deep - aside);
        var bed = Math.Min(Base, deep - aside - broken);
        Layer? Of(Soil? what, decimal thick) => what is null ? null : new(what, Quantity.Of(opened * thick, "m³"));
        Soil? Named(string cell) => figures.Row(Row.Words(cell)) is { } row ? new(row) : null;
        return new(
            Quantity.Of(opened * aside, "m³"),
            broken > 0 ? Of(Named("broken-is"), broken) : null,
            bed > 0 ? Of(Named("base-is"), bed) : null,
            Of(soil, deep - aside - broken - bed));
    }

    /// <summary>Hours of breaking up that area by a practised labourer with a machine, pieces taken away; nothing where nothing is broken. Never over a cable: there it is cut outside and lifted by hand. Source: Planning Planet's hand labour outputs.</summary>
    public Quantity? BreakHours(GroundFigures figures, Quantity? area)
    {
        var rate = figures.In(Row.Words("breaks"), "high", "hours").Over(figures.In(Row.Words("breaks"), "thickness", "m"));
        return Broken == 0 ? Quantity.Of(0, "hours") : (figures.SquareMetres(area) * Broken * rate).Of("hours");
    }
}

/// <summary>What a cut opens, from the top down: the volume in m³ that is laid aside, and the layers that come out as spoil, each null where there is none. Below is null while the soil is not known.</summary>
public sealed record Cut(Quantity Aside, Layer? Broken, Layer? Bed, Layer? Below)
{
    /// <summary>The layers that come out, top first.</summary>
    public ImmutableArray<Layer> Spoil => [.. new[] { Broken, Bed, Below }.OfType<Layer>()];
}
