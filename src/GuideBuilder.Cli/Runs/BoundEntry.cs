using GuideBuilder.Rendering;

namespace GuideBuilder.Cli.Runs;

/// <summary>One handbook in the list of a folder: its id, the key of all that it was bound from, what a catalogue tells of it, and its files.</summary>
internal sealed record BoundEntry(string Id, string Key, BookAbout About, ImmutableArray<BoundEntryFile> Files)
{
    /// <summary>Whether every file still stands in the folder with its length.</summary>
    internal bool StandsIn(string folder) => Files.All(f => new FileInfo(Path.Combine(folder, f.Name)) is { Exists: true } file && file.Length == f.Length);
}

/// <summary>A file of a handbook: its name, its length in bytes, and its SHA-256.</summary>
internal sealed record BoundEntryFile(string Name, long Length, string Hash);
