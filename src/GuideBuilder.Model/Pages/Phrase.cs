namespace GuideBuilder.Model;

/// <summary>A run of words with what they carry: the text of a paragraph, a cell, a heading.</summary>
public sealed record Phrase(ImmutableArray<Inline> Parts)
{
    /// <summary>No words.</summary>
    public static Phrase Empty { get; } = new([]);

    /// <summary>True when there is nothing to read.</summary>
    public bool IsEmpty => Parts.IsEmpty;

    /// <summary>Plain words.</summary>
    public static Phrase Of(string words) => words.Length == 0 ? Empty : new([new Inline.Words(words)]);

    /// <summary>One inline as a phrase.</summary>
    public static Phrase Of(Inline inline) => new([inline]);

    /// <summary>Several phrases with the same words between them.</summary>
    public static Phrase Join(string between, IEnumerable<Phrase> phrases) =>
        phrases.Where(p => !p.IsEmpty).Aggregate(Empty, (all, next) => all.IsEmpty ? next : all + Of(between) + next);

    /// <summary>One after the other.</summary>
    public static Phrase operator +(Phrase left, Phrase right) => new(left.Parts.AddRange(right.Parts));

    /// <summary>One after the other.</summary>
    public static Phrase Add(Phrase left, Phrase right) => left + right;

    /// <summary>The words alone, as they are read aloud.</summary>
    public string PlainWords => string.Concat(Parts.Select(p => p.PlainWords));
}
