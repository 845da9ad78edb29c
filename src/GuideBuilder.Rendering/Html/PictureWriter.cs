namespace GuideBuilder.Rendering.Html;

/// <summary>Writes drawings as inline SVG. Looks are classes of the stylesheet; hatches are patterns of the drawing's own.</summary>
internal static class PictureWriter
{
    private static readonly ImmutableArray<Hatch> Hatches = [Hatch.Rising, Hatch.Falling, Hatch.Crossed, Hatch.Level, Hatch.Upright, Hatch.Dotted];

    /// <summary>A drawing with its name and its words for those who do not see it.</summary>
    internal static void Write(HtmlWriter html, Block.Drawing drawing, string prefix)
    {
        var id = prefix + drawing.Id;
        var picture = drawing.Picture;
        html.Open("figure", ("class", "drawing"), ("id", id)).Line();
        html.Open("svg", ("viewBox", $"0 0 {Number(picture.Width)} {Number(picture.Height)}"), ("fill", "none"), ("role", "img"), ("aria-labelledby", $"{id}-name {id}-words"));
        html.Open("title", ("id", $"{id}-name")).Bare(drawing.Name).Close().Open("desc", ("id", $"{id}-words")).Bare(drawing.InWords).Close();
        Patterns(html, id, picture);
        foreach (var mark in picture.Marks)
        {
            Write(html, mark, id);
        }

        html.CloseLine().Open("figcaption").Text(drawing.Name).CloseLine().CloseLine();
    }

    /// <summary>The triangle of general warning, drawn for these pages; the word beside it says the same.</summary>
    internal static void Triangle(HtmlWriter html)
    {
        html.Open("svg", ("class", "triangle"), ("viewBox", "0 0 40 36"), ("aria-hidden", "true"), ("focusable", "false"));
        html.Mark("path", ("class", "triangle-edge"), ("d", "M20 2 38.5 33.5H1.5Z"));
        html.Mark("path", ("class", "triangle-mark"), ("d", "M17.8 12h4.4l-.9 11.5h-2.6Z"));
        html.Mark("circle", ("class", "triangle-mark"), ("cx", "20"), ("cy", "28"), ("r", "2.3"));
        html.Close();
    }

    private static void Patterns(HtmlWriter html, string id, Picture picture)
    {
        var used = picture.Marks.Select(HatchOf).Where(h => h != Hatch.None).ToHashSet();
        if (used.Count == 0)
        {
            return;
        }

        html.Open("defs");
        foreach (var hatch in Hatches.Where(used.Contains))
        {
            html.Open("pattern", ("id", PatternId(id, hatch)), ("width", "8"), ("height", "8"), ("patternUnits", "userSpaceOnUse"));
            html.Mark("path", ("class", hatch == Hatch.Dotted ? "hatch-dot" : "hatch"), ("d", Strokes(hatch))).Close();
        }

        html.Close();
    }

    private static string Strokes(Hatch hatch) => hatch switch
    {
        Hatch.Rising => "M0 8 8 0M-2 2 2-2M6 10 10 6",
        Hatch.Falling => "M0 0 8 8M-2 6 2 10M6-2 10 2",
        Hatch.Crossed => "M0 8 8 0M-2 2 2-2M6 10 10 6M0 0 8 8M-2 6 2 10M6-2 10 2",
        Hatch.Level => "M0 4H8",
        Hatch.Upright => "M4 0V8",
        Hatch.Dotted => "M1 1h1.6v1.6H1ZM5 5h1.6v1.6H5Z",
        _ => throw new UnreachableException(),
    };

    private static void Write(HtmlWriter html, PictureMark mark, string id)
    {
        switch (mark)
        {
            case PictureMark.Line line:
                html.Mark("line", ("class", line.Look), ("x1", Number(line.X1)), ("y1", Number(line.Y1)), ("x2", Number(line.X2)), ("y2", Number(line.Y2)));
                break;
            case PictureMark.Box box:
                html.Mark("rect", ("class", box.Look), ("x", Number(box.X)), ("y", Number(box.Y)), ("width", Number(box.Width)), ("height", Number(box.Height)), Fill(id, box.Hatch));
                break;
            case PictureMark.Shape shape:
                var points = string.Join(' ', shape.Points.Select(p => $"{Number(p.X)},{Number(p.Y)}"));
                html.Mark(shape.Closed ? "polygon" : "polyline", ("class", shape.Look), ("points", points), Fill(id, shape.Hatch));
                break;
            case PictureMark.Dot dot:
                html.Mark("circle", ("class", dot.Look), ("cx", Number(dot.X)), ("cy", Number(dot.Y)), ("r", Number(dot.Radius)));
                break;
            case PictureMark.Words words:
                html.Open("text", ("class", words.Look.Length == 0 ? null : words.Look), ("x", Number(words.X)), ("y", Number(words.Y)), ("text-anchor", Anchor(words.From))).Bare(words.Text).Close();
                break;
            default:
                throw new UnreachableException();
        }
    }

    private static Hatch HatchOf(PictureMark mark) => mark switch
    {
        PictureMark.Box box => box.Hatch,
        PictureMark.Shape shape => shape.Hatch,
        _ => Hatch.None,
    };

    private static (string Name, string? Value) Fill(string id, Hatch hatch) => ("fill", hatch == Hatch.None ? null : $"url(#{PatternId(id, hatch)})");

    private static string PatternId(string id, Hatch hatch) => $"{id}-{hatch.ToString().ToLowerInvariant()}";

    private static string? Anchor(Anchoring from) => from switch
    {
        Anchoring.Start => null,
        Anchoring.Middle => "middle",
        Anchoring.End => "end",
        _ => throw new UnreachableException(),
    };

    // A tenth of a unit is less than a phone can show.
    private static string Number(decimal number) => Invariant($"{decimal.Round(number, 1):0.#}");
}
