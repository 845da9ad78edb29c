namespace GuideBuilder.Rendering.Drawings;

/// <summary>Collects the marks of a drawing in the order in which they are drawn. Widths are in units of which a phone shows about one to a pixel.</summary>
internal sealed class Sketch
{
    /// <summary>The width of every drawing: that of a small phone, so that its words stay legible there.</summary>
    internal const decimal Width = 340;

    /// <summary>From one line of small words to the next.</summary>
    internal const decimal LineHeight = 13;

    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();

    /// <summary>A line.</summary>
    internal Sketch Line(decimal x1, decimal y1, decimal x2, decimal y2, string look = "line") => Add(new PictureMark.Line(x1, y1, x2, y2, look));

    /// <summary>A box.</summary>
    internal Sketch Box(decimal x, decimal y, decimal width, decimal height, string look = "outline", Hatch hatch = Hatch.None) => Add(new PictureMark.Box(x, y, width, height, look, hatch));

    /// <summary>A bent line or a polygon through points.</summary>
    internal Sketch Shape(bool closed, string look, Hatch hatch, params (decimal X, decimal Y)[] points) =>
        Add(new PictureMark.Shape([.. points.Select(p => new PicturePoint(p.X, p.Y))], closed, look, hatch));

    /// <summary>A round mark.</summary>
    internal Sketch Dot(decimal x, decimal y, decimal radius, string look) => Add(new PictureMark.Dot(x, y, radius, look));

    /// <summary>Words that begin at a point.</summary>
    internal Sketch Say(decimal x, decimal y, string words, string look = "", Anchoring from = Anchoring.Start) => Add(new PictureMark.Words(x, y, words, look, from));

    /// <summary>Words broken into lines of at most so many letters, one under another; the point is that of the first line.</summary>
    internal Sketch Wrap(decimal x, decimal y, int letters, string words, string look = "small", Anchoring from = Anchoring.Middle)
    {
        var line = "";
        foreach (var word in words.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > letters)
            {
                Say(x, y, line, look, from);
                (line, y) = (word, y + LineHeight);
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        return Say(x, y, line, look, from);
    }

    /// <summary>A level dimension line with its words above it.</summary>
    internal Sketch Across(decimal x1, decimal x2, decimal y, string words) =>
        Line(x1, y, x2, y, "fine").Line(x1, y - 4, x1, y + 4).Line(x2, y - 4, x2, y + 4).Say((x1 + x2) / 2, y - 5, words, "small", Anchoring.Middle);

    /// <summary>An upright dimension line with its words to the right of it.</summary>
    internal Sketch Down(decimal x, decimal y1, decimal y2, string words) => Down(x, y1, y2).Say(x + 7, ((y1 + y2) / 2) + 4, words, "small");

    /// <summary>An upright dimension line without words.</summary>
    internal Sketch Down(decimal x, decimal y1, decimal y2) => Line(x, y1, x, y2, "fine").Line(x - 4, y1, x + 4, y1).Line(x - 4, y2, x + 4, y2);

    /// <summary>The drawing at a height.</summary>
    internal Picture Finish(decimal height) => new(Width, height, _marks.ToImmutable());

    private Sketch Add(PictureMark mark)
    {
        _marks.Add(mark);
        return this;
    }
}
