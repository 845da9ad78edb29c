using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Costs;

public sealed class QuotationCheckTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Costs = [Small.Cost("alteration"), Small.Cost("tails", by: "electrician")],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 600, 1100, 2000, VatBasis.Including)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    [Theory]
    [InlineData(500, VatBasis.Including, RangePosition.Below)]
    [InlineData(1100, VatBasis.Including, RangePosition.Inside)]
    [InlineData(1500, VatBasis.Excluding, RangePosition.Above)]
    public void A_quotation_is_held_against_the_range_of_what_it_stands_for_with_vat(decimal sum, VatBasis stated, RangePosition position)
    {
        var paper = new Paper(PaperKind.Quotation, "operator", Small.Today, null, new Value.Amount(Quantity.Of(sum, "£"), stated), [], [], null, Place.None);
        var check = Assert.Single(Small.Plan(Guidance, Small.Answers(Guidance) with { Papers = [paper] }).QuotationChecks);

        Assert.Equal(position, check.Position);
        Assert.Equal(["alteration"], check.Lines);
    }
}
