namespace GuideBuilder.Planning.Electrical;

/// <summary>Shares single-phase loads out over three lines so that the most loaded line carries as little as can be.</summary>
public static class LineBalance
{
    private const int MostTriedEachWay = 6;

    /// <summary>The loads in their given order, each on its line; loads on all three stay there. The best arrangement for up to six loads that can move, a good one beyond. Of equally good ones the first in order of lines. Null if a demand is not known.</summary>
    public static ImmutableArray<Load>? Allocate(ElectricalFigures figures, IEnumerable<Load> loads, Premises premises = Premises.Household)
    {
        var given = loads.ToImmutableArray();
        if (MaximumDemand.Of(figures, given, premises) is null)
        {
            return null;
        }

        var movable = Enumerable.Range(0, given.Length).Where(i => given[i].Line != Line.All).ToArray();
        return movable.Length <= MostTriedEachWay ? Best(figures, premises, given, movable) : Greedy(figures, premises, given, movable);
    }

    private static ImmutableArray<Load> Best(ElectricalFigures figures, Premises premises, ImmutableArray<Load> loads, int[] movable)
    {
        var count = Enumerable.Repeat(3, Math.Max(0, movable.Length - 1)).Aggregate(1, (product, lines) => product * lines);
        return Enumerable.Range(0, count).Select(code => Arrange(loads, movable, code)).MinBy(arranged => Highest(figures, premises, arranged));
    }

    // The first movable load stays on the first line, because the lines are alike; the digits of the code place the others.
    private static ImmutableArray<Load> Arrange(ImmutableArray<Load> loads, int[] movable, int code)
    {
        var arranged = loads.ToBuilder();
        for (var i = movable.Length - 1; i >= 0; i--)
        {
            arranged[movable[i]] = arranged[movable[i]] with { Line = (Line)(i == 0 ? 0 : code % 3) };
            code /= 3;
        }

        return arranged.ToImmutable();
    }

    private static ImmutableArray<Load> Greedy(ElectricalFigures figures, Premises premises, ImmutableArray<Load> loads, int[] movable)
    {
        var placed = loads.Where(l => l.Line == Line.All).ToImmutableArray();
        var arranged = loads.ToBuilder();
        foreach (var i in movable.OrderByDescending(i => loads[i].Current.Base))
        {
            var load = new[] { Line.First, Line.Second, Line.Third }.Select(line => loads[i] with { Line = line })
                .MinBy(l => MaximumDemand.OnLine(figures, premises, placed.Add(l), l.Line))!;
            placed = placed.Add(load);
            arranged[i] = load;
        }

        return arranged.ToImmutable();
    }

    private static decimal? Highest(ElectricalFigures figures, Premises premises, ImmutableArray<Load> loads) =>
        MaximumDemand.Of(figures, loads, premises)?.Highest.Base;
}
