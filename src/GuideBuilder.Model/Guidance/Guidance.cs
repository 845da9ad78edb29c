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
public sealed record Template(string Id, LocalText Text);

/// <summary>A fixed phrase that readers see, with its forms for one and for other numbers (the same where it has one form).</summary>
public sealed record Label(string Id, LocalText One, LocalText Other);

/// <summary>The files of content/look/: frame, stylesheet, script, drawing colours, as text by file name.</summary>
public sealed record Look(FrozenDictionary<string, LocalText> Files);
