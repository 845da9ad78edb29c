namespace GuideBuilder.Model;

/// <summary>An answers file as it is written, before anything is made of it: the notes (comments, without their #) at its top, its sections in order, and the notes after the last of them.</summary>
public sealed record WrittenAnswers(ImmutableArray<string> NotesAtTop, ImmutableArray<WrittenEntry> Sections, ImmutableArray<string> NotesAtEnd);

/// <summary>A key with its value, and the notes that belong to it.</summary>
public sealed record WrittenEntry(string Key, Written Value, ImmutableArray<string> Notes);

/// <summary>One item of a list, and the notes that belong to it.</summary>
public sealed record WrittenItem(Written Value, ImmutableArray<string> Notes);

/// <summary>What stands under a key, as a person wrote it: a closed set.</summary>
public abstract record Written
{
    private Written()
    {
    }

    /// <summary>One value; between quotes it is a person's own word even where it would else stand for something, such as <c>unknown</c>.</summary>
    public sealed record One(string Text, bool Quoted) : Written;

    /// <summary>A list, in written order.</summary>
    public sealed record List(ImmutableArray<WrittenItem> Items) : Written;

    /// <summary>Keys with their values, in written order.</summary>
    public sealed record Keys(ImmutableArray<WrittenEntry> Entries) : Written;
}
