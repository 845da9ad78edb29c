namespace GuideBuilder.Model;

/// <summary>Where something was written: a file as the person named it, and a line and column counted from one (column = UTF-16 unit + 1, as editors count).</summary>
public sealed record Place(string Path, int Line, int Column) : IComparable<Place>
{
    /// <summary>A place for what no file says: shown as the program itself, and sorted first.</summary>
    public static Place None { get; } = new("", 0, 0);

    /// <summary>Orders by path (ordinal), then line, then column, so that faults read from the top of each file.</summary>
    public int CompareTo(Place? other)
    {
        if (other is null)
        {
            return 1;
        }

        var byPath = string.CompareOrdinal(Path, other.Path);
        var byLine = byPath != 0 ? byPath : Line.CompareTo(other.Line);
        return byLine != 0 ? byLine : Column.CompareTo(other.Column);
    }

    /// <summary>The form that editors can jump to: path:line:column.</summary>
    public override string ToString() => this == None ? "guidebuilder" : Invariant($"{Path}:{Line}:{Column}");
}
