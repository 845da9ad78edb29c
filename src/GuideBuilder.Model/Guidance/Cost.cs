namespace GuideBuilder.Model;

/// <summary>A line of money: who invoices it, which price row it takes, how many of them (the name of a fact, or one), and at which step it falls due.</summary>
public sealed record Cost(RuleHead Head, string InvoicedBy, string Price, string? Quantity, string? DueAt, LocalText About) : Rule(Head)
{
    /// <summary>The meeting (id) on which what is paid for is done, where it is paid in advance; null where it is done by the time it falls due.</summary>
    public string? PaidAheadOf { get; init; }

    /// <summary>Whether nobody knows who pays it while its condition is open: it is then listed as one that may be nil, and counts in no world.</summary>
    public bool NilWhileOpen { get; init; }
}

/// <summary>A row of the price table: three points per unit, how stated, which VAT kind, which price year and index, and whether a region factor applies.</summary>
public sealed record Price(string Id, ThreePoint Amount, Unit Currency, VatBasis StatedAs, string VatKind, int Year, string Index, string? RegionFactor, Basis Basis, Place Place)
{
    /// <summary>The nations for which the price holds; empty for all.</summary>
    public ImmutableArray<string> Nations { get; init; } = [];
}

/// <summary>A VAT rate (share of the net) by nation for one kind of supply; null where it does not arise there.</summary>
public sealed record VatRate(string Id, LocalText Title, FrozenDictionary<string, decimal> ByNation, Basis Basis, Place Place)
{
    /// <summary>What applies where a price is mostly goods; null where no nation asks.</summary>
    public GoodsRule? Goods { get; init; }
}

/// <summary>A nation's rule on goods in a price of work: where they are more than so many parts of so many before VAT, the whole takes the rate of another kind (the id of a VAT row).</summary>
public sealed record GoodsRule(string Nation, int Most, int Of, string Then);

/// <summary>A price index: its value by year.</summary>
public sealed record PriceIndex(string Id, LocalText Title, FrozenDictionary<int, decimal> ByYear, Basis Basis, Place Place);

/// <summary>Factors on prices by region, for one kind of price.</summary>
public sealed record RegionFactor(string Id, FrozenDictionary<string, decimal> ByRegion, Basis Basis, Place Place)
{
    /// <summary>How far prices of this kind are dear or cheap together in one home: their rank correlation, from 0 to 1.</summary>
    public decimal Together { get; init; }
}
