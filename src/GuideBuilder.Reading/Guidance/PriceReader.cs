namespace GuideBuilder.Reading;

/// <summary>Reads one row of the price table.</summary>
internal sealed class PriceReader(Desk desk)
{
    private static readonly Read<VatBasis> ReadBasis = Values.OneOf(
        ("inc VAT", VatBasis.Including), ("ex VAT", VatBasis.Excluding), ("outside VAT", VatBasis.Outside));

    /// <summary>The price in an entry.</summary>
    public Price Read(Fields fields)
    {
        var currency = Unit.Of(fields.Node("low") is Scalar low && low.Text.StartsWith('€') ? "€" : "£");
        var statedAs = fields.Need("stated-as", ReadBasis, VatBasis.Outside);
        return new(
            fields.Need("id", Values.Id, ""),
            desk.ThreePoint(fields, Sum(currency)),
            currency,
            statedAs,
            statedAs == VatBasis.Outside ? desk.FindReference(fields, "vat", Kinds.Vat) ?? "" : desk.NeedReference(fields, "vat", Kinds.Vat),
            fields.Need("price-year", Values.Whole(1950, 2199), 1950),
            desk.NeedReference(fields, "index", Kinds.Index),
            desk.FindReference(fields, "region", Kinds.Region),
            desk.Basis(fields, required: true),
            fields.Place)
        { Nations = desk.References(fields, "nations", Kinds.Nation) };
    }

    /// <summary>Reads a sum with its currency sign and nothing more.</summary>
    public static Read<decimal> Sum(Unit currency) => (node, faults) =>
    {
        if (Values.Single(node, faults) is not { } text)
        {
            return 0m;
        }

        var amount = QuantityText.Read(text, currency, node.Place, faults);
        if (amount is { Vat: not VatBasis.NotStated } || !text.TrimStart().StartsWith(currency.Symbol, StringComparison.Ordinal))
        {
            faults.Add(ReadingFaults.NotABareSum(node.Place, currency.Symbol));
        }

        return amount?.Quantity.Amount ?? 0m;
    };
}
