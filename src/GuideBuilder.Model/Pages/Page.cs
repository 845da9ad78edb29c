namespace GuideBuilder.Model;

/// <summary>A page as a value, before it has an address: its id (the file's name), what it is, its number in reading order, its title and what stands on it. Links name items.</summary>
public sealed record Page(string Id, PageKind Kind, string Number, Phrase Title, ImmutableArray<Block> Blocks)
{
    /// <summary>The language of the page's own text; that of the guidance unless the page has been translated.</summary>
    public string Language { get; init; } = LocalText.Original;
}

/// <summary>What a page is about.</summary>
public enum PageKind
{
    /// <summary>The first page.</summary>
    Cover,

    /// <summary>A chapter that an editor wrote.</summary>
    Chapter,

    /// <summary>The home page of a party.</summary>
    Party,

    /// <summary>The home page of a way.</summary>
    Way,

    /// <summary>The home page of a step.</summary>
    Step,

    /// <summary>The home page of a hazard.</summary>
    Hazard,

    /// <summary>A letter or call note, on a sheet of its own.</summary>
    Letter,
}
