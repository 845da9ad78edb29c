namespace GuideBuilder.Model;

/// <summary>A file as it was loaded: the name to print in faults, and its bytes, not yet decoded.</summary>
public sealed record SourceText(string Path, ReadOnlyMemory<byte> Bytes);
