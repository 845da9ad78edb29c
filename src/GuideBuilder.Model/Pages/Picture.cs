namespace GuideBuilder.Model;

/// <summary>A line drawing: its size in units of its own, and its marks, drawn in order.</summary>
public sealed record Picture(decimal Width, decimal Height, ImmutableArray<PictureMark> Marks);

/// <summary>A mark of a drawing: a closed set. Its look is a name that the stylesheet knows; its fill may be a hatch.</summary>
public abstract record PictureMark(string Look)
{
    /// <summary>A line from one point to another.</summary>
    public sealed record Line(decimal X1, decimal Y1, decimal X2, decimal Y2, string Look) : PictureMark(Look);

    /// <summary>A box, filled with a hatch or not at all.</summary>
    public sealed record Box(decimal X, decimal Y, decimal Width, decimal Height, string Look, Hatch Hatch = Hatch.None) : PictureMark(Look);

    /// <summary>A polygon or, open, a bent line.</summary>
    public sealed record Shape(ImmutableArray<PicturePoint> Points, bool Closed, string Look, Hatch Hatch = Hatch.None) : PictureMark(Look);

    /// <summary>A round mark.</summary>
    public sealed record Dot(decimal X, decimal Y, decimal Radius, string Look) : PictureMark(Look);

    /// <summary>Words, starting at, centred on or ending at a point.</summary>
    public sealed record Words(decimal X, decimal Y, string Text, string Look, Anchoring From = Anchoring.Start) : PictureMark(Look);
}

/// <summary>A point of a drawing.</summary>
public sealed record PicturePoint(decimal X, decimal Y);

/// <summary>Which part of the words stands at their point.</summary>
public enum Anchoring
{
    /// <summary>Their beginning.</summary>
    Start,

    /// <summary>Their middle.</summary>
    Middle,

    /// <summary>Their end.</summary>
    End,
}

/// <summary>Ways of filling a shape that need no colour, so that owners and soils differ on any paper.</summary>
public enum Hatch
{
    /// <summary>Not filled.</summary>
    None,

    /// <summary>Lines rising to the right.</summary>
    Rising,

    /// <summary>Lines falling to the right.</summary>
    Falling,

    /// <summary>Both ways across.</summary>
    Crossed,

    /// <summary>Level lines.</summary>
    Level,

    /// <summary>Upright lines.</summary>
    Upright,

    /// <summary>Dots.</summary>
    Dotted,
}
