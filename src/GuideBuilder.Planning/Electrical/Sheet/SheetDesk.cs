using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Electrical;

/// <summary>What every part of the sheet writes with: the figures, the answers, the supply read off them.</summary>
internal sealed record SheetDesk(ElectricalFigures Figures, Inputs Inputs, HomeSupply Supply)
{
    /// <summary>An answer as an input.</summary>
    public SheetFigure Answer(string question, FigureOrigin origin = FigureOrigin.Answered) => new(question, Inputs.Lookup(question).Value, origin);

    /// <summary>A figure of the tables as an input.</summary>
    public SheetFigure Cell(string row, string cell, FigureOrigin origin = FigureOrigin.Table) => new(row, Worth(Figures.Quantity(row, cell)), origin);

    /// <summary>A figure from another line of the sheet.</summary>
    public static SheetFigure Worked(string line, Quantity? amount) => new(line, Worth(amount), FigureOrigin.WorkedOut);

    /// <summary>A line that only gives a figure.</summary>
    public SheetRow Line(string id, string formula, IEnumerable<SheetFigure> inputs, Value? result, params string[] rows) =>
        Line(id, formula, inputs, result, null, LimitVerdict.NotKnown, rows);

    /// <summary>A line with a limit and a verdict. The rows are those of the tables beside the inputs; sources and mark follow from all of them.</summary>
    public SheetRow Line(string id, string formula, IEnumerable<SheetFigure> inputs, Value? result, SheetFigure? limit, LimitVerdict verdict, params string[] rows)
    {
        var all = inputs.ToImmutableArray();
        var used = all.Append(limit).OfType<SheetFigure>().Select(f => f.Name).Concat(rows).Select(Figures.Row).OfType<TableRow>().DistinctBy(r => r.Id).ToImmutableArray();
        var open = all.Append(limit).OfType<SheetFigure>().Where(f => f.Worth is null && f.Origin is FigureOrigin.Answered or FigureOrigin.Measured).Select(f => f.Name);
        return new(
            id, formula, all, result, limit, verdict,
            [.. used.Select(r => r.Id)],
            [.. used.SelectMany(r => r.Basis.Sources).Distinct(StringComparer.Ordinal)],
            used.Select(r => r.Basis.Mark).DefaultIfEmpty(Mark.Judged).Max(),
            [.. open.Distinct(StringComparer.Ordinal)]);
    }

    /// <summary>A quantity as a value; null stays null.</summary>
    public static Value? Worth(Quantity? quantity) => quantity is null ? null : new Value.Amount(quantity);
}
