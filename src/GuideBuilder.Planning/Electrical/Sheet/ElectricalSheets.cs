using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>Draws up the electrical sheet from answers and tables.</summary>
public static class ElectricalSheets
{
    /// <summary>The sheet for a home. An answer that is not known, or out of range, leaves its lines without a result and names the question.</summary>
    public static ElectricalSheet Of(Lookup lookup, Tables tables)
    {
        var desk = Desk(lookup, tables);
        var lines = Lines(desk);
        return new(lines, SheetQuestions.Of(desk, lines)) { Cases = PossibleAnswers.Of(lines, lookup, other => Lines(Desk(other, tables))) };
    }

    private static SheetDesk Desk(Lookup lookup, Tables tables)
    {
        var inputs = new Inputs(lookup, tables);
        return new(ElectricalFigures.From(tables), inputs, HomeSupply.Of(inputs));
    }

    private static ImmutableArray<SheetRow> Lines(SheetDesk desk) =>
        Settled([.. SupplyLines.Of(desk), .. DemandLines.Of(desk), .. TailsLines.Of(desk), .. SubMainLines.Of(desk), .. EarthingLines.Of(desk)]);

    // What settles a figure settles those that rest on it.
    private static ImmutableArray<SheetRow> Settled(ImmutableArray<SheetRow> lines)
    {
        var open = new Dictionary<string, ImmutableArray<string>>(StringComparer.Ordinal);
        var settled = ImmutableArray.CreateBuilder<SheetRow>(lines.Length);
        foreach (var line in lines)
        {
            var above = line.Inputs.Append(line.Limit).OfType<SheetFigure>().Where(f => f is { Worth: null, Origin: FigureOrigin.WorkedOut }).SelectMany(f => open.GetValueOrDefault(f.Name, []));
            settled.Add(line with { Open = [.. line.Open.Concat(above).Distinct(StringComparer.Ordinal)] });
            open.TryAdd(line.Id, settled[^1].Open);
        }

        return settled.ToImmutable();
    }
}
