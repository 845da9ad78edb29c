namespace GuideBuilder.Model;

/// <summary>What can stand on a page: a closed set. Where a block has an anchor it is the home of the item of that id.</summary>
public abstract record Block
{
    private Block()
    {
    }

    /// <summary>A paragraph.</summary>
    public sealed record Prose(Phrase Words) : Block;

    /// <summary>A heading; level 1 stands directly under the page's own title.</summary>
    public sealed record Heading(int Level, string? Anchor, Phrase Words) : Block;

    /// <summary>A list, numbered or not.</summary>
    public sealed record Listing(bool Numbered, ImmutableArray<ImmutableArray<Block>> Items) : Block;

    /// <summary>Terms and what is said of each.</summary>
    public sealed record Definitions(ImmutableArray<Definition> Items) : Block;

    /// <summary>Somebody else's words.</summary>
    public sealed record Quotation(ImmutableArray<Block> Inside) : Block;

    /// <summary>Lines to keep exactly as they are.</summary>
    public sealed record ExactLines(string Text) : Block;

    /// <summary>A change of subject.</summary>
    public sealed record Divider : Block;

    /// <summary>An entry of the field book: a title (none where the page's own title serves), its text, and the lines of the left column, which follow the text in the source.</summary>
    public sealed record Entry(string? Anchor, int Level, Phrase Title, ImmutableArray<Block> Text, ImmutableArray<SideLine> Lines) : Block;

    /// <summary>A table: what it shows, its columns, its rows.</summary>
    public sealed record Grid(Phrase Caption, ImmutableArray<GridColumn> Columns, ImmutableArray<GridRow> Rows) : Block;

    /// <summary>A safety message under its signal word.</summary>
    public sealed record DangerPanel(string? Anchor, SignalWord Word, string WordText, int Level, Phrase Title, ImmutableArray<Block> Text) : Block;

    /// <summary>A drawing with its name and what it says in words; the table that says the same follows it on the page.</summary>
    public sealed record Drawing(string Id, string Name, string InWords, Picture Picture) : Block;

    /// <summary>The picture of whoever hands the book out, and what it says in words.</summary>
    public sealed record Logo(ImprintLogo Picture, string InWords) : Block;

    /// <summary>Boxes to tick; each label is the whole task.</summary>
    public sealed record Ticks(ImmutableArray<Tick> Boxes) : Block;

    /// <summary>Blocks that belong on one sheet of paper.</summary>
    public sealed record Sheet(ImmutableArray<Block> Inside) : Block;
}

/// <summary>A term, and what is said of it; the anchor makes it the home of an item.</summary>
public sealed record Definition(string? Anchor, Phrase Term, ImmutableArray<Block> Said);

/// <summary>One line of the left column: what it tells, in words, and what it says.</summary>
public sealed record SideLine(string Label, Phrase Says);

/// <summary>A column of a table; figures are set to the right with figures of one width.</summary>
public sealed record GridColumn(string Head, bool Figures = false);

/// <summary>A row of a table, its first cell the row's own head; the anchor makes it the home of an item. A sum is ruled off above.</summary>
public sealed record GridRow(string? Anchor, ImmutableArray<Phrase> Cells, bool IsSum = false);

/// <summary>A box to tick: its id on its page, and the task.</summary>
public sealed record Tick(string Id, Phrase Task);
