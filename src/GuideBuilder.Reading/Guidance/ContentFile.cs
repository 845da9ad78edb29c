namespace GuideBuilder.Reading;

/// <summary>One file of the guidance: its name below the guidance folder, its tree (for YAML) or text (for the rest), and where it begins.</summary>
internal sealed record ContentFile(string Name, Node? Root, string? Text, Place Start)
{
    /// <summary>The language of its text; another than the original where a translated page took its place.</summary>
    public string Language { get; init; } = LocalText.Original;

    /// <summary>The translated title of a page whose text is not translated.</summary>
    public LocalText? OwnTitle { get; init; }

    /// <summary>The last part of the name, without its ending.</summary>
    public string Stem => Name[(Name.LastIndexOf('/') + 1)..].Split('.')[0];

    /// <summary>The entries of the file: the mappings of its outermost list.</summary>
    public IEnumerable<Mapping> Entries => Root is Sequence list ? list.Items.OfType<Mapping>() : [];

    /// <summary>Whether the file stands in a folder.</summary>
    public bool IsIn(string folder) => Name.StartsWith(folder + "/", StringComparison.Ordinal);
}
