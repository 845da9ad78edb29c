namespace GuideBuilder.Rendering.Html;

/// <summary>Writes tables: a caption, a head for each column and each row, one fact to a cell.</summary>
internal static class GridWriter
{
    internal static void Write(HtmlWriter html, PhraseWriter phrases, Block.Grid grid, string captionId, Func<string?, string?> id)
    {
        html.Open("table").Line();
        if (!grid.Caption.IsEmpty)
        {
            html.Open("caption", ("id", captionId));
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
            Row(html, phrases, grid.Columns, row, id(row.Anchor));
        }

        html.CloseLine().Close();
    }

    private static void Row(HtmlWriter html, PhraseWriter phrases, ImmutableArray<GridColumn> columns, GridRow row, string? id)
    {
        html.Open("tr", ("id", id), ("class", row.IsSum ? "sum" : null));
        for (var i = 0; i < row.Cells.Length; i++)
        {
            var figures = i < columns.Length && columns[i].Figures ? "figures" : null;
            _ = i == 0 ? html.Open("th", ("scope", "row")) : html.Open("td", ("class", figures));
            phrases.Write(row.Cells[i]);
            html.Close();
        }

        html.CloseLine();
    }
}
