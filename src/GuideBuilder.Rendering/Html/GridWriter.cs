namespace GuideBuilder.Rendering.Html;

/// <summary>Writes tables: a caption, a head for each column and each row, one fact to a cell. The cells of a wide table repeat the head of their column, which a narrow page prints before them.</summary>
internal static class GridWriter
{
    internal static void Write(HtmlWriter html, PhraseWriter phrases, Block.Grid grid, bool wide, Func<string?, string?> id)
    {
        html.Open("table").Line();
        if (!grid.Caption.IsEmpty)
        {
            html.Open("caption");
            phrases.Write(grid.Caption);
            html.CloseLine();
        }

        html.Open("thead").Open("tr");
        foreach (var column in grid.Columns)
        {
            html.Open("th", ("scope", "col"), ("class", column.Figures ? "figures" : null)).Text(column.Head).Close();
        }

        html.Close().CloseLine().Open("tbody").Line();
        foreach (var row in grid.Rows)
        {
            Row(html, phrases, grid.Columns, row, id(row.Anchor), wide);
        }

        html.CloseLine().Close();
    }

    private static void Row(HtmlWriter html, PhraseWriter phrases, ImmutableArray<GridColumn> columns, GridRow row, string? id, bool wide)
    {
        html.Open("tr", ("id", id), ("class", row.IsSum ? "sum" : null));
        for (var i = 0; i < row.Cells.Length; i++)
        {
            var figures = i < columns.Length && columns[i].Figures ? "figures" : null;
            _ = i == 0 ? html.Open("th", ("scope", "row")) : html.Open("td", ("class", figures), ("data-head", wide && i < columns.Length ? columns[i].Head : null));
            phrases.Write(row.Cells[i]);
            html.Close();
        }

        html.CloseLine();
    }
}
