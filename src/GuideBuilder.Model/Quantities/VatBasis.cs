namespace GuideBuilder.Model;

/// <summary>How a sum of money was stated. VAT is never inferred silently.</summary>
public enum VatBasis
{
    /// <summary>Nobody said whether VAT is in it.</summary>
    NotStated,

    /// <summary>VAT is in it.</summary>
    Including,

    /// <summary>VAT comes on top.</summary>
    Excluding,

    /// <summary>Outside VAT: a statutory fee, a payment between private people.</summary>
    Outside,
}
