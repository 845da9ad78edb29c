using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>Draws up the electrical sheet from answers and tables.</summary>
public static class ElectricalSheets
{
    /// <summary>The sheet for a home. An answer that is not known, or out of range, leaves its lines without a result and names the question.</summary>
    public static ElectricalSheet Of(Lookup lookup, Tables tables)
    {
        var inputs = new Inputs(lookup, tables);
        var desk = new SheetDesk(ElectricalFigures.From(tables), inputs, HomeSupply.Of(inputs));
        ImmutableArray<SheetRow> lines = [.. SupplyLines.Of(desk), .. DemandLines.Of(desk), .. TailsLines.Of(desk), .. SubMainLines.Of(desk), .. EarthingLines.Of(desk)];
        return new(lines, SheetQuestions.Of(desk, lines));
    }
}
