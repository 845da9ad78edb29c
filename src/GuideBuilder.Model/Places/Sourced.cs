namespace GuideBuilder.Model;

/// <summary>A value that remembers where it was written.</summary>
public sealed record Sourced<T>(T Value, Place Place);
