using System.Collections.Frozen;
using GuideBuilder.Model;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

public sealed class PriceTests
{
    // Consumer price index, all items, 2015 = 100, annual averages: Office for National Statistics, series D7BT (read).
    private static readonly PriceIndex Cpi = Index("cpi", (2011, 93.4m), (2013, 98.5m), (2019, 107.8m), (2021, 111.6m), (2023, 130.5m), (2025, 138.4m));

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

    // Construction materials, all work, 2015 = 100: Department for Business and Trade, Building materials and components (read).
    private static readonly PriceIndex AllWork = Index("all-work", (2020, 112.3m), (2022, 154.1m));

    /// <summary>
    /// A home-builder's account of a service over 120 m: £8,000 without VAT for the trench, £27,000 more for the operator (read; taken as 2019). By the metre, and 10 m of it in the money of 2025 (derived);
    /// and the rise of materials for all work from 2020 to 2022 (derived).
    /// </summary>
    [Theory]
    [InlineData(66.6667, 2019, "cpi", 10, 855.90, 855.95)]
    [InlineData(291.6667, 2025, "cpi", 120, 35000, 35000.01)]
    [InlineData(100, 2020, "all-work", 1, 137.22, 137.22)]
    public void A_price_by_the_metre_is_multiplied_and_carried(decimal each, int year, string index, decimal count, decimal least, decimal most)
    {
        var price = Small.Price("price", each, each, each, VatBasis.Outside) with { Index = index, Year = year };
        var market = new Market(Small.Empty.Nations[0], null, Small.Empty.Tables with { Indexes = [Cpi, AllWork] });

        Assert.InRange(Pricing.Of(price, count, market).Gross.Likely, least, most);
    }

    /// <summary>A bundle of a cabinet at £75, a bend at £20, five metres of duct at £2.50 and tape at £15 (memory): £122.50, shown as £123 (derived).</summary>
    [Fact]
    public void A_bundle_adds_up_and_is_shown_in_whole_pounds()
    {
        var market = new Market(Small.Empty.Nations[0], null, Small.Empty.Tables);
        decimal Of(decimal each, decimal count) => Pricing.Of(Small.Price("price", each, each, each, VatBasis.Including), count, market).Gross.Likely;
        var sum = Of(75, 1) + Of(20, 1) + Of(2.5m, 5) + Of(15, 1);

        Assert.Equal((122.50m, "£123"), (sum, GuideBuilder.Rendering.Wording.Figures.Rough(sum, Unit.Of("£"))));
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
