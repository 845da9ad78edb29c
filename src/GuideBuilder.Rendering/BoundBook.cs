namespace GuideBuilder.Rendering;

/// <summary>A handbook in memory: its files in a decided order, the cover first.</summary>
public sealed record BoundBook(string Id, ImmutableArray<BoundFile> Files)
{
    /// <summary>The names of the pages that are made to be printed, in the order of the files.</summary>
    public ImmutableArray<string> ForPaper { get; init; } = [];

    /// <summary>What a catalogue tells of it.</summary>
    public BookAbout About { get; init; } = BookAbout.Nothing;
}

/// <summary>One file: its name relative to the handbook's folder, made from ids only, and its bytes.</summary>
public sealed record BoundFile(string Name, ReadOnlyMemory<byte> Bytes);
