using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.SupplyNumbers;

namespace GuideBuilder.Planning.Ground;

/// <summary>The lines about what the operator wants of duct and trench (rows letter-… of the table networks). Its answer outranks what it has in print, and that outranks what is common.</summary>
internal static class LetterLines
{
    private const string Default = "trench-default";

    public static IEnumerable<SheetRow> Of(GroundDesk desk, Lookup known) =>
        from row in desk.Figures.Group("letter-")
        let figure = Answered(row, known) ?? Common(desk, row, known)
        select desk.Line(row.Id, "letter", [figure], figure.Worth, row.Id);

    private static SheetFigure? Answered(TableRow row, Lookup known) => row.Words("asks") is { Length: > 0 } name && known(name) is { Standing: Standing.Known } given
        ? new(name, given.Value, FigureOrigin.Answered)
        : null;

    private static SheetFigure Common(GroundDesk desk, TableRow row, Lookup known)
    {
        var (cell, inputs) = (row.Words("cell"), new Inputs(known, desk.Home.Inputs.Tables));
        var (area, nation) = (SupplyFacts.Read(inputs)?.Area ?? "", inputs.Option("home.nation") ?? "");
        var own = desk.Figures.Group("trench-").FirstOrDefault(r => (r.List("areas").Contains(area) || r.List("nations").Contains(nation)) && r.Cells.ContainsKey(cell));
        return own is not null ? Figure(own, cell) : row.List("otherwise") is [var id, var other] && desk.Figures.Row(id) is { } common ? Figure(common, other) : Figure(desk.Figures.Row(Default), cell);
    }

    private static SheetFigure Figure(TableRow? row, string cell) => new(row?.Id ?? Default, Worth(row?.Cells.GetValueOrDefault(cell)), FigureOrigin.Table);

    private static Value? Worth(Cell? cell) => cell is null ? null : cell.Quantity is { } quantity ? new Value.Amount(quantity) : new Value.Words(cell.Words);
}
