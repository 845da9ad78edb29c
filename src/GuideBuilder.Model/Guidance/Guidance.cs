namespace GuideBuilder.Model;

/// <summary>Everything under content/, read and checked once. Every list is in written order: files by ordinal path, entries as they stand.</summary>
public sealed record Guidance(
    GuidanceHead Head,
    ImmutableArray<Nation> Nations,
    ImmutableArray<Question> Questions,
    ImmutableArray<FactRule> Facts,
    ImmutableArray<Party> Parties,
    ImmutableArray<Way> Ways,
    ImmutableArray<Step> Steps,
    ImmutableArray<Cost> Costs,
    ImmutableArray<Hazard> Hazards,
    ImmutableArray<Consent> Consents,
    ImmutableArray<Clock> Clocks,
    ImmutableArray<Source> Sources,
    ImmutableArray<Term> Terms,
    Tables Tables,
    ImmutableArray<Template> Pages,
    ImmutableArray<Template> Letters,
    FrozenDictionary<string, Label> Labels,
    Look Look)
{
    /// <summary>The costs that only a chance event brings, by id.</summary>
    public FrozenSet<string> ChanceCosts => Steps.SelectMany(s => s.MayHappen).SelectMany(e => e.Costs).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>What is known of the days on which several parties meet.</summary>
    public ImmutableArray<Meeting> Meetings { get; init; } = [];

    /// <summary>What letters and pages may print, where that is not the usual.</summary>
    public ImmutableArray<Disclosure> Disclosures { get; init; } = [];

    /// <summary>The language of the books bound from it; every text that is not translated is still in the original one.</summary>
    public BookLanguage Language { get; init; } = BookLanguage.Original;

    /// <summary>The fixed phrases as first written, for pages that are not translated; empty where the book is in the original language.</summary>
    public FrozenDictionary<string, Label> PlainLabels { get; init; } = FrozenDictionary<string, Label>.Empty;

    /// <summary>Whoever hands the handbook out under its own name; null for nobody.</summary>
    public Imprint? Imprint { get; init; }
}

/// <summary>A language of books: its tag (BCP 47), its own name for itself, and who has read the translation (null while no native reader has).</summary>
public sealed record BookLanguage(string Id, LocalText Title, Review? ReviewedBy)
{
    /// <summary>The one in which the guidance is written, which needs no translation.</summary>
    public static BookLanguage Original { get; } = new(LocalText.Original, LocalText.Empty, null);

    /// <summary>Whether it is the one in which the guidance is written.</summary>
    public bool IsOriginal => Id == LocalText.Original;
}

/// <summary>What the guidance says of itself: title, the day it was edited, the day after which its figures need another look, and its languages.</summary>
public sealed record GuidanceHead(LocalText Title, LocalDate EditionDate, LocalDate ReviewBy, ImmutableArray<string> Languages);

/// <summary>The tables of figures.</summary>
public sealed record Tables(
    ImmutableArray<Price> Prices,
    ImmutableArray<VatRate> Vat,
    ImmutableArray<PriceIndex> Indexes,
    ImmutableArray<RegionFactor> Regions,
    ImmutableArray<HolidayList> Holidays,
    ImmutableArray<TableRow> Rows);

/// <summary>A page or letter as an editor wrote it: CommonMark with Scriban, its first line the title. Id = file name.</summary>
public sealed record Template(string Id, LocalText Text)
{
    /// <summary>Its title in the language of the book, where that alone has been translated; null for the first line of the text.</summary>
    public LocalText? OwnTitle { get; init; }
}

/// <summary>A fixed phrase that readers see, with its forms for one and for other numbers (the same where it has one form).</summary>
public sealed record Label(string Id, LocalText One, LocalText Other);

/// <summary>The files of content/look/: frame, stylesheet, script, drawing colours, as text by file name.</summary>
public sealed record Look(FrozenDictionary<string, LocalText> Files);
