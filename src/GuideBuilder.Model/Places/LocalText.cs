namespace GuideBuilder.Model;

/// <summary>Words for a reader: the words, the language they are in (BCP 47, such as en-GB), and where they were written. Markdown (CommonMark) where the entry says so.</summary>
public sealed record LocalText(string Words, string Language, Place Place)
{
    /// <summary>No words at all; an entry whose optional text was left out.</summary>
    public static LocalText Empty { get; } = new("", "en-GB", Place.None);

    /// <summary>True when nothing was written.</summary>
    public bool IsEmpty => Words.Length == 0;
}
