namespace GuideBuilder.Planning.Electrical;

/// <summary>The most that a home is expected to draw at once, in amps on each line.</summary>
public sealed record MaximumDemand(Quantity First, Quantity Second, Quantity Third)
{
    /// <summary>The most loaded line.</summary>
    public Quantity Highest => new[] { First, Second, Third }.MaxBy(q => q.Base)!;

    /// <summary>Sums the allowances on each line; loads on all three count on each. Null if one allowance is not known. An upper estimate where ratings of devices stand for currents. Source: as <see cref="Diversity"/>.</summary>
    public static MaximumDemand? Of(ElectricalFigures figures, IEnumerable<Load> loads, Premises premises = Premises.Household)
    {
        var all = loads.ToImmutableArray();
        var lines = new[] { Line.First, Line.Second, Line.Third }.Select(line => OnLine(figures, premises, all, line).Of("A")).ToArray();
        return lines is [{ } first, { } second, { } third] ? new(first, second, third) : null;
    }

    /// <summary>What is left of a fuse for a charger that gives way to the rest, in amps: the fuse less the demand of all else, never less than nothing. Null outside 0 to 3,000 A.</summary>
    public static Quantity? Headroom(ElectricalFigures figures, Quantity fuse, Quantity demandOfAllElse) =>
        figures.Amps(fuse) - figures.Amps(demandOfAllElse) is { } left ? Quantity.Of(Math.Max(0, left), "A") : null;

    /// <summary>Demand in hundredths of a fuse. Null if the fuse is nothing or either is outside 0 to 3,000 A.</summary>
    public static Quantity? ShareOfFuse(ElectricalFigures figures, Quantity demand, Quantity fuse) =>
        (figures.Amps(demand) * 100).Over(figures.Amps(fuse)).Of("%");

    internal static decimal? OnLine(ElectricalFigures figures, Premises premises, ImmutableArray<Load> loads, Line line) =>
        loads.Where(l => l.Line == line || l.Line == Line.All).GroupBy(l => l.Kind)
            .Select(kind => Diversity.Amps(figures, premises, kind.Key, [.. kind])).Total();
}
