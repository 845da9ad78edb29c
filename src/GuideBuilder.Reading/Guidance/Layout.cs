namespace GuideBuilder.Reading;

/// <summary>Which files belong to the guidance, and what each holds.</summary>
internal static class Layout
{
    /// <summary>The sections of the questionnaire, in the order in which a person would walk round.</summary>
    public static ImmutableArray<string> Sections { get; } =
        ["home", "people", "intake", "meter", "board", "wish", "place", "ground", "loads", "land", "works", "operator", "dates"];

    private static readonly FrozenDictionary<string, string> ByName = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["facts.yaml"] = Kinds.Fact,
        ["parties.yaml"] = Kinds.Party,
        ["ways.yaml"] = Kinds.Way,
        ["steps.yaml"] = Kinds.Step,
        ["costs.yaml"] = Kinds.Cost,
        ["hazards.yaml"] = Kinds.Hazard,
        ["consents.yaml"] = Kinds.Consent,
        ["clocks.yaml"] = Kinds.Clock,
        ["meetings.yaml"] = Kinds.Meeting,
        ["disclosure.yaml"] = Kinds.Disclosure,
        ["sources.yaml"] = Kinds.Source,
        ["glossary.yaml"] = Kinds.Term,
        ["labels.yaml"] = Kinds.Label,
        ["tables/prices.yaml"] = Kinds.Price,
        ["tables/vat.yaml"] = Kinds.Vat,
        ["tables/index.yaml"] = Kinds.Index,
        ["tables/regions.yaml"] = Kinds.Region,
        ["tables/holidays.yaml"] = Kinds.Holidays,
        [LanguageFile] = Kinds.Language,
        [Head] = Head,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The one file that must be there.</summary>
    public const string Head = "guidance.yaml";

    /// <summary>The folder of translations, one folder a language, each laid out as the guidance itself.</summary>
    public const string Words = "words";

    /// <summary>The file in which a translation says who has read it.</summary>
    public const string LanguageFile = "language.yaml";

    /// <summary>What the entries of a YAML file are, or null when the file does not belong to the guidance: a kind, a question section's name after "question", or a free table.</summary>
    public static string? KindOf(string name)
    {
        var parts = name.Split('/');
        return parts switch
        {
            _ when ByName.TryGetValue(name, out var kind) => kind,
            ["questions", var file] when Sections.Any(s => file == s + ".yaml") => Kinds.Question,
            ["tables", var file] when file.EndsWith(".yaml", StringComparison.Ordinal) && Ids.IsId(file[..^5]) => file[..^5],
            ["pages" or "letters", var file] when file.EndsWith(".md", StringComparison.Ordinal) && Ids.IsId(file[..^3]) => parts[0] == "pages" ? Kinds.Page : Kinds.Letter,
            ["look", _] => "look",
            [Words, _, .. var below] => below is ["look" or Words, ..] ? null : KindOf(string.Join('/', below)),
            _ => null,
        };
    }

    /// <summary>Every fixed name, for the nearest right one.</summary>
    public static IEnumerable<string> Names => ByName.Keys.Where(n => n != LanguageFile).Concat(Sections.Select(s => $"questions/{s}.yaml"));

    /// <summary>Files that stand beside the guidance for its editors and are not read.</summary>
    public static bool IsForEditors(string name) => name is "README.md";
}
