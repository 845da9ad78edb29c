using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

public sealed class PriceTests
{
    // Consumer price index, all items, 2015 = 100, annual averages: Office for National Statistics, series D7BT (read).
    private static readonly PriceIndex Cpi = Index("cpi", (2011, 93.4m), (2013, 98.5m), (2021, 111.6m), (2023, 130.5m), (2025, 138.4m));

    // Construction materials, repair and maintenance, 2015 = 100: Department for Business and Trade, Building materials and components (read).
    private static readonly PriceIndex Materials = Index("materials", (2018, 111.3m), (2023, 152.6m));

    /// <summary>Northern Powergrid, guide price for a domestic service alteration, £600 excluding VAT (read); Electricity North West, indicative costs, average £1,200 and £1,050 including VAT (read); UK Power Networks, charge tables (read). Each sum derived at 20 %.</summary>
    [Theory]
    [InlineData(600, VatBasis.Excluding, 600, 720)]
    [InlineData(1200, VatBasis.Including, 1000, 1200)]
    [InlineData(1050, VatBasis.Including, 875, 1050)]
    [InlineData(2079, VatBasis.Excluding, 2079, 2494.80)]
    [InlineData(3418, VatBasis.Excluding, 3418, 4101.60)]
    [InlineData(323, VatBasis.Excluding, 323, 387.60)]
    public void Published_charges_split_into_net_and_vat(decimal stated, VatBasis basis, decimal net, decimal gross)
    {
        var sum = Pricing.Split(ThreePoint.Certain(stated), basis, 0.2m);

        Assert.Equal((net, gross), (sum.Net.Likely, sum.Gross.Likely));
    }

    /// <summary>Published prices of earlier years carried by the published indices; the products are derived.</summary>
    [Theory]
    [InlineData(670, 2011, "cpi", 992.81)]
    [InlineData(550, 2023, "cpi", 583.30)]
    [InlineData(130, 2013, "cpi", 182.66)]
    [InlineData(3500, 2021, "cpi", 4340.50)]
    [InlineData(6000, 2021, "cpi", 7440.86)]
    [InlineData(100, 2018, "materials", 137.11)]
    public void A_price_is_brought_to_the_newest_year_of_its_index(decimal then, int year, string index, decimal now)
    {
        var price = Small.Price("price", then, then, then, VatBasis.Outside) with { Index = index, Year = year };
        var market = new Market(Small.Empty.Nations[0], null, Small.Empty.Tables with { Indexes = [Cpi, Materials] });

        Assert.Equal(now, Pricing.Of(price, 1, market).Gross.Likely);
    }

    private static PriceIndex Index(string id, params (int Year, decimal Value)[] years) =>
        new(id, Small.Words(id), years.ToFrozenDictionary(y => y.Year, y => y.Value), Basis.Nothing, Place.None);
}
