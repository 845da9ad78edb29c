namespace GuideBuilder.Planning.Ground;

/// <summary>What the lines of the ground sheet share: the home as the assumed world has it, and which answers are really known.</summary>
internal sealed class GroundDesk(GroundHome home, Lookup known)
{
    public GroundHome Home => home;

    public GroundFigures Figures => home.Figures;

    /// <summary>The rows of soil and surface that stand for the answers.</summary>
    public string[] EarthRows => [.. new[] { home.Soil?.Row, home.Surface?.Row, home.HoleCut?.Broken?.Soil.Row, home.HoleCut?.Bed?.Soil.Row }.OfType<TableRow>().Select(r => r.Id).Distinct(StringComparer.Ordinal)];

    /// <summary>An answer or fact as an input: known, or what the assumed world takes.</summary>
    public SheetFigure Answer(string name) => known(name) is { Standing: Standing.Known } given
        ? new(name, given.Value, FigureOrigin.Answered)
        : new(name, home.Inputs.Lookup(name).Value, FigureOrigin.Assumed);

    /// <summary>A figure of the tables as an input.</summary>
    public SheetFigure Cell(string row, string cell) => new(row, Worth(Figures.Quantity(row, cell)), FigureOrigin.Table);

    /// <summary>A figure of the tables that stands for what nobody has said.</summary>
    public SheetFigure Taken(string row, string cell) => Cell(row, cell) with { Origin = FigureOrigin.Assumed };

    /// <summary>The result of another line as an input.</summary>
    public static SheetFigure Worked(string line, Quantity? quantity) => new(line, Worth(quantity), FigureOrigin.WorkedOut);

    /// <summary>A line without a limit. The rows are those of the tables beside the inputs.</summary>
    public SheetRow Line(string id, string formula, IEnumerable<SheetFigure> inputs, Value? result, params string[] rows) => Line(id, formula, inputs, result, null, LimitVerdict.NotKnown, rows);

    /// <summary>A line with a quantity as its result.</summary>
    public SheetRow Line(string id, string formula, IEnumerable<SheetFigure> inputs, Quantity? result, params string[] rows) => Line(id, formula, inputs, Worth(result), rows);

    /// <summary>A line that may not be more than a limit; no figure of the ground is so sure that near would differ from over.</summary>
    public SheetRow Limited(string id, string formula, IEnumerable<SheetFigure> inputs, Quantity? result, SheetFigure limit, params string[] rows)
    {
        var most = (limit.Worth as Value.Amount)?.Quantity;
        var verdict = result is null || most is null || most.Unit.Dimension != result.Unit.Dimension ? LimitVerdict.NotKnown : result.Against(most) > 0 ? LimitVerdict.Over : LimitVerdict.Within;
        return Line(id, formula, inputs, Worth(result), limit, limit.Origin == FigureOrigin.Answered ? verdict : LimitVerdict.NotKnown, rows);
    }

    /// <summary>A quantity as a value; null stays null.</summary>
    public static Value? Worth(Quantity? quantity) => quantity is null ? null : new Value.Amount(quantity);

    private SheetRow Line(string id, string formula, IEnumerable<SheetFigure> inputs, Value? result, SheetFigure? limit, LimitVerdict verdict, string[] rows)
    {
        var all = inputs.ToImmutableArray();
        var figures = all.Append(limit).OfType<SheetFigure>().ToArray();
        var used = figures.Select(f => f.Name).Concat(rows).Select(Figures.Row).OfType<TableRow>().DistinctBy(r => r.Id).ToImmutableArray();
        return new(
            id, formula, all, result, limit, verdict,
            [.. used.Select(r => r.Id)],
            [.. used.SelectMany(r => r.Basis.Sources).Distinct(StringComparer.Ordinal)],
            used.Select(r => r.Basis.Mark).DefaultIfEmpty(Mark.Judged).Max(),
            [.. figures.Where(f => f.Origin == FigureOrigin.Assumed && f.Name.Contains('.')).Select(f => f.Name).Distinct(StringComparer.Ordinal)]);
    }
}
