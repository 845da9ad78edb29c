namespace GuideBuilder.Model;

/// <summary>A paper that the household holds: a quotation, certificate, letter, plan or survey result; from which party, dated and valid until when, for how much, which costs it covers and which it says it leaves out (cost ids), and its reference.</summary>
public sealed record Paper(
    PaperKind Kind,
    string? From,
    LocalDate? Dated,
    LocalDate? ValidUntil,
    Value.Amount? Amount,
    ImmutableArray<Sourced<string>> Covers,
    ImmutableArray<Sourced<string>> LeavesOut,
    string? Reference,
    Place Place)
{
    /// <summary>What of a quotation is goods, before VAT; null where it does not say.</summary>
    public Quantity? Goods { get; init; }
}

/// <summary>What a paper is.</summary>
public enum PaperKind
{
    /// <summary>A price offered for a scope, with a term.</summary>
    Quotation,

    /// <summary>A certificate of electrical or building work.</summary>
    Certificate,

    /// <summary>A consent in writing.</summary>
    Consent,

    /// <summary>Plans of buried services.</summary>
    Plans,

    /// <summary>The result of a survey or a sample.</summary>
    Survey,

    /// <summary>Any other letter that matters.</summary>
    Letter,
}
