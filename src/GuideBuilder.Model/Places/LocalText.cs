namespace GuideBuilder.Model;

/// <summary>Words for a reader: the words, the language they are in (BCP 47, such as en-GB), and where they were written. Markdown (CommonMark) where the entry says so.</summary>
public sealed record LocalText(string Words, string Language, Place Place)
{
    /// <summary>The language in which the guidance is written, and into which every missing translation falls back.</summary>
    public const string Original = "en-GB";

    /// <summary>No words at all; an entry whose optional text was left out.</summary>
    public static LocalText Empty { get; } = new("", Original, Place.None);

    /// <summary>True when nothing was written.</summary>
    public bool IsEmpty => Words.Length == 0;
}
