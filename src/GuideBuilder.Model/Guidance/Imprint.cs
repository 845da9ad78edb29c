namespace GuideBuilder.Model;

/// <summary>Whoever hands the handbook out under its own name: who that is, how to reach it, which parties of the plan it is, and its own words (CommonMark, without templates). It adds to the guidance and takes nothing away.</summary>
public sealed record Imprint(
    LocalText Name,
    LocalText Address,
    LocalText Registration,
    ImprintContact Contact,
    ImmutableArray<string> Parties,
    ImprintLogo? Logo,
    ImprintColours Colours,
    LocalText Opening,
    LocalText Closing,
    LocalText Terms,
    int? PricesHoldDays,
    Place Place)
{
    /// <summary>The cost lines whose prices are its own (ids).</summary>
    public ImmutableArray<string> OwnPrices { get; init; } = [];

    /// <summary>The id of the source that an own figure names.</summary>
    public const string SourceId = "imprint";
}

/// <summary>How to reach whoever hands the handbook out; any of the three may be missing.</summary>
public sealed record ImprintContact(LocalText Telephone, LocalText Email, LocalText Website);

/// <summary>A checked picture: what kind it is (image/svg+xml or image/png), and its bytes with nothing in them but the picture.</summary>
public sealed record ImprintLogo(string MediaType, ReadOnlyMemory<byte> Bytes);

/// <summary>Two colours as #rrggbb, with the places they stand at: that of links and that of rules. Null where the look's own serves.</summary>
public sealed record ImprintColours(Sourced<string>? Links, Sourced<string>? Rules);
