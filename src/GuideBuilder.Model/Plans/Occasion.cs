namespace GuideBuilder.Model;

/// <summary>What a plan depends on besides answers and guidance: today, the seed of its draws, and the edition to bind.</summary>
public sealed record Occasion(LocalDate Today, ulong Seed, EditionKind Edition)
{
    /// <summary>The seed when nobody gives one.</summary>
    public const ulong DefaultSeed = 20260101;

    /// <summary>Whether only faults are looked for: then next to nothing is tried, and no range or chance means anything.</summary>
    public bool FaultsOnly { get; init; }
}
