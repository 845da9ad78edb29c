namespace GuideBuilder.Planning.Costs;

/// <summary>From a row of the price table to money of the newest year, here.</summary>
internal static class Pricing
{
    /// <summary>So many of that price: brought to the newest year of its index and to the region, rounded by line to the penny, halves away from zero.</summary>
    public static Sum Of(Price price, decimal quantity, Market market)
    {
        var factor = quantity * IndexFactor(price, market.Tables) * RegionalFactor(price, market);
        return Split(price.Amount.Map(a => Penny(a * factor)), price.StatedAs, VatShare(price, market));
    }

    /// <summary>An amount as it was stated, split into net and VAT. Not stated counts as including it at best and as excluding it at worst.</summary>
    public static Sum Split(ThreePoint amount, VatBasis stated, decimal rate) => stated switch
    {
        VatBasis.Including => new(amount.Map(a => Net(a, rate)), rate, amount),
        VatBasis.Excluding => new(amount, rate, amount.Map(a => Gross(a, rate))),
        VatBasis.Outside => new(amount, 0, amount),
        VatBasis.NotStated => new(
            ThreePoint.Of(Net(amount.Low, rate), Net(amount.Likely, rate), amount.High)!,
            rate,
            ThreePoint.Of(amount.Low, amount.Likely, Gross(amount.High, rate))!),
        _ => throw new UnreachableException(),
    };

    /// <summary>The VAT rate of a price as a share of the net, or that of a quotation for it, whose goods may ask for another; none where VAT does not arise.</summary>
    public static decimal VatShare(Price price, Market market, Paper? quotation = null)
    {
        var usual = RateOf(price.VatKind, market);
        return market.Tables.Vat.FirstOrDefault(v => v.Id == price.VatKind)?.Goods is { } rule && rule.Nation == market.Nation.Id && IsMostlyGoods(quotation, rule, usual)
            ? RateOf(rule.Then, market)
            : usual;
    }

    /// <summary>How prices have moved from the price's year to the newest; null when the index has no value for that year.</summary>
    public static decimal? FromItsYear(Price price, Tables tables)
    {
        var index = tables.Indexes.FirstOrDefault(i => i.Id == price.Index);
        return index is null ? 1 : index.ByYear.TryGetValue(price.Year, out var then) ? index.ByYear[index.ByYear.Keys.Max()] / then : null;
    }

    private static decimal RateOf(string? kind, Market market) => market.Tables.Vat.FirstOrDefault(v => v.Id == kind)?.ByNation.GetValueOrDefault(market.Nation.Id) ?? 0;

    private static bool IsMostlyGoods(Paper? quotation, GoodsRule rule, decimal usual) =>
        quotation is { Goods: { } goods, Amount: { } amount }
        && goods.Amount * rule.Of > Split(ThreePoint.Certain(amount.Quantity.Amount), amount.Vat, usual).Net.Likely * rule.Most;

    private static decimal IndexFactor(Price price, Tables tables) => FromItsYear(price, tables) ?? 1;

    private static decimal RegionalFactor(Price price, Market market) =>
        price.RegionFactor is { } id && market.Region is { } region
            ? market.Tables.Regions.FirstOrDefault(r => r.Id == id)?.ByRegion.GetValueOrDefault(region, 1) ?? 1
            : 1;

    private static decimal Net(decimal gross, decimal rate) => Penny(gross / (1 + rate));

    private static decimal Gross(decimal net, decimal rate) => Penny(net * (1 + rate));

    private static decimal Penny(decimal amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);
}
