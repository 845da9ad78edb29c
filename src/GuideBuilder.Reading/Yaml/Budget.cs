namespace GuideBuilder.Reading;

/// <summary>How much of a file is read before it counts as a mistake: bytes, levels of nesting, and nodes.</summary>
internal sealed record Budget(int Bytes, int Depth, int Nodes)
{
    /// <summary>For an answers file: 1 MiB.</summary>
    public static Budget Answers { get; } = new(1 << 20, 32, 200_000);

    /// <summary>For one file of the guidance: 4 MiB.</summary>
    public static Budget Guidance { get; } = new(4 << 20, 32, 200_000);
}
