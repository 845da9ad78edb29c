namespace GuideBuilder.Model;

/// <summary>The handbook section of an answers file: format number, id ([a-z0-9-]{3,40}), edition, who filled it in, and the imprint file if one is named.</summary>
public sealed record HandbookSettings(int Format, string Id, EditionKind Edition, string? FilledInBy, Sourced<string>? Imprint)
{
    /// <summary>Whether the id was written in the file, and is not the file's own name.</summary>
    public bool HasOwnId { get; init; } = true;

    /// <summary>The id of the public edition, where it has one of its own.</summary>
    public string? PublicId { get; init; }

    /// <summary>The language of the book; null for that of the guidance.</summary>
    public Sourced<string>? Language { get; init; }
}
