namespace GuideBuilder.Planning.Costs;

/// <summary>Where prices are asked: the nation, whose VAT and money count, and the region, or null where it is not known.</summary>
internal sealed record Market(Nation Nation, string? Region, Tables Tables);

/// <summary>A sum of money for one line, net and gross to the penny, and the VAT rate as a share of the net.</summary>
internal sealed record Sum(ThreePoint Net, decimal VatShare, ThreePoint Gross)
{
    /// <summary>Nothing to pay.</summary>
    public static Sum Nothing { get; } = new(ThreePoint.Zero, 0, ThreePoint.Zero);
}
