using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Planning;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading.Overlays;

public sealed class ImprintReaderTests
{
    private const string Firm = "name: A firm\nparties: [electrician]\n";

    [Theory]
    [InlineData("«hazards»: []", "HB1020")]
    [InlineData("«cautions»: none", "HB1020")]
    [InlineData("openning: Hello", "HB1020")]
    [InlineData("opening: «\"{{ answer \\\"home.address\\\" }}\"»", "HB1130")]
    [InlineData("prices: {«operator-alteration»: {low: £1, likely: £1, high: £1}}", "HB1129")]
    [InlineData("prices: {«operator-dig»: {low: £1, likely: £1, high: £1}}", "HB1129")]
    [InlineData("prices: {«electrician-tials»: {low: £1, likely: £1, high: £1}}", "HB1073")]
    [InlineData("prices: {electrician-tails: «{low: £3, likely: £2, high: £1, stated-as: inc VAT}»}", "HB1078")]
    [InlineData("durations: {«site-visit»: {low: 1, likely: 1, high: 1, unit: working days}}", "HB1129")]
    [InlineData("colours: {links: «blue»}", "HB1132")]
    [InlineData("logo: «none.svg»", "HB1131")]
    public void A_wrong_imprint_is_found_where_it_stands(string marked, string code)
    {
        var text = Marked.Parse(Firm + marked);
        var faults = ImprintReader.Over(Content.Guidance, text.As("ours.yaml"), null).Faults;

        Assert.Contains(faults, f => f.Code == code && (text.Marks.Count == 0 || (f.Place.Line, f.Place.Column) == text.Marks[0]));
    }

    [Theory]
    [InlineData("network-operator")]
    [InlineData("supplier")]
    [InlineData("meter-operator")]
    [InlineData("building-control")]
    [InlineData("household")]
    public void Nobody_prints_under_the_name_of_a_network_a_supplier_or_a_council(string party) =>
        Assert.Contains(ImprintReader.Over(Content.Guidance, new("ours.yaml", Encoding.UTF8.GetBytes($"name: A firm\nparties: [{party}]\n")), null).Faults, f => f.Code == "HB1128");

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><script>1</script></svg>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><a href='https://x.example'><path d='M0 0'/></a></svg>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0' onclick='1'/></svg>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0' fill='url(https://x.example)'/></svg>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0' style='fill:red'/></svg>")]
    [InlineData("<!DOCTYPE svg [<!ENTITY a 'b'>]><svg xmlns='http://www.w3.org/2000/svg'>&a;</svg>")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'>")]
    [InlineData("<html/>")]
    [InlineData("GIF89a")]
    public void A_logo_that_could_do_more_than_be_seen_is_refused(string logo) => Assert.Contains(WithLogo(Encoding.UTF8.GetBytes(logo)).Faults, f => f.Code == "HB1131");

    [Fact]
    public void A_picture_keeps_its_pixels_and_loses_what_it_tells()
    {
        // One white pixel, with a text chunk that names somebody.
        const string Head = "89504E470D0A1A0A0000000D49484452000000010000000108000000003A7E9B55";
        const string Told = "0000000C74455874417574686F7200526F77616E98DDD173";
        const string Pixels = "0000000A49444154789C63F80F0001010100B138F6140000000049454E44AE426082";
        var (clean, picture) = (Convert.FromHexString(Head + Pixels), Convert.FromHexString(Head + Told + Pixels));
        var logo = WithLogo(picture).Value!.Imprint!.Logo!;

        Assert.Equal("image/png", logo.MediaType);
        Assert.Equal(clean, logo.Bytes.ToArray());
        Assert.Contains(WithLogo(picture[..^3]).Faults, f => f.Code == "HB1131");
        picture[20] ^= 1;
        Assert.Contains(WithLogo(picture).Faults, f => f.Code == "HB1131");
    }

    [Theory]
    [InlineData("{low: 0, likely: 0, high: 0, unit: hours}")]
    [InlineData("{low: 0.25, likely: 1, high: 2, unit: hours}")]
    [InlineData("{low: 1, likely: 1, high: 1, unit: working days}")]
    public void A_turn_of_a_day_takes_hours_and_is_no_quicker_than_the_guidance_thinks_possible(string takes) =>
        Assert.Contains(Laid(takes).Faults, f => f.Code == "HB1142");

    [Fact]
    public void The_hours_that_a_firm_gives_for_its_turn_are_those_of_the_day()
    {
        var laid = Laid("{low: 2, likely: 2.5, high: 3, unit: hours}").Value!;

        Assert.Equal(ThreePoint.Of(2m, 2.5m, 3m), laid.Steps.Single(s => s.Id == "day-live-tests").Hours);
        Assert.Equal(Content.Guidance.Steps.Single(s => s.Id == "day-joint").Hours, laid.Steps.Single(s => s.Id == "day-joint").Hours);
    }

    private static Staged<Guidance> Laid(string takes) =>
        ImprintReader.Over(Content.Guidance, new("ours.yaml", Encoding.UTF8.GetBytes(Firm + "durations:\n  day-live-tests: " + takes + "\n")), null);

    [Fact]
    public void The_customers_edition_needs_an_imprint() =>
        Assert.Contains(EditionAnswers.Of(Editions.Demo, Content.Guidance, EditionKind.Customer).Faults, f => f.Code == "HB1126");

    [Fact]
    public void The_public_edition_needs_an_id_of_its_own() =>
        Assert.Contains(EditionAnswers.Of(Editions.Demo with { Handbook = Editions.Demo.Handbook with { HasOwnId = false, PublicId = null } }, Content.Guidance, EditionKind.Public).Faults, f => f.Code == "HB1056");

    [Fact]
    public void The_id_of_a_private_handbook_does_not_become_public_by_itself()
    {
        var (home, guidance) = (Editions.Demo with { Handbook = Editions.Demo.Handbook with { PublicId = null } }, Content.Guidance);
        var (named, published) = (home with { Handbook = home.Handbook with { PublicId = "a-semi" } }, home with { Handbook = home.Handbook with { Edition = EditionKind.Public } });

        Assert.Contains(EditionAnswers.Of(home, guidance, EditionKind.Public).Faults, f => f.Code == "HB1141");
        Assert.Equal("a-semi", EditionAnswers.Of(named, guidance, EditionKind.Public).Value!.Handbook.Id);
        Assert.Equal("avebury-close", EditionAnswers.Of(published, guidance, EditionKind.Public).Value!.Handbook.Id);
        Assert.Equal("avebury-close", EditionAnswers.Of(named, guidance, EditionKind.Householder).Value!.Handbook.Id);
    }

    [Fact]
    public void Health_is_printed_after_consent_only() => SmallGuidance.Finds("disclosure.yaml", "- «{id: application, may-print: [health]}»\n", "HB1127");

    [Theory]
    [InlineData("network-operator")]
    [InlineData("supplier")]
    [InlineData("building-control")]
    public void No_line_of_a_network_a_supplier_or_a_council_takes_a_firms_price(string party)
    {
        var lines = Content.Guidance.Costs.Where(c => c.InvoicedBy == party).Select(c => c.Id).ToList();
        var text = Firm + "prices:\n" + string.Concat(lines.Select(id => $"  {id}: {{low: £1, likely: £1, high: £1, stated-as: inc VAT}}\n"));
        var laid = ImprintReader.Over(Content.Guidance, new("ours.yaml", Encoding.UTF8.GetBytes(text)), null);

        Assert.NotEmpty(lines);
        Assert.Equal(lines.Count, laid.Faults.Count(f => f.Code == "HB1129"));
    }

    [Fact]
    public void A_firms_prices_change_its_own_lines_of_a_plan_and_no_other()
    {
        var (own, common) = (Editions.Plan(Editions.Demo, EditionKind.Customer).Costs, Planned(Content.Guidance));
        var changed = own.Zip(common).Where(c => c.First.Gross != c.Second.Gross || c.First.Price.Id != c.Second.Price.Id).Select(c => (c.First.Cost.Item.Id, c.First.Cost.Item.InvoicedBy));

        Assert.Equal([("electrician-tails", "electrician")], changed);
        Assert.Equal(["imprint"], own.Single(c => c.Cost.Item.Id == "electrician-tails").Price.Basis.Sources);
    }

    [Fact]
    public void Prices_and_durations_are_laid_over_the_firms_own_lines()
    {
        var guidance = Editions.Imprinted;
        var cost = guidance.Costs.Single(c => c.Id == "electrician-tails");

        Assert.Equal(ThreePoint.Of(280, 340, 460), guidance.Tables.Prices.Single(p => p.Id == cost.Price).Amount);
        Assert.Equal(["imprint"], cost.Head.Basis.Sources);
        Assert.Equal(ThreePoint.Of(1, 1, 2), guidance.Steps.Single(s => s.Id == "prepare-tails").Takes.Amount);
        Assert.Equal(Content.Guidance.Hazards.Length, guidance.Hazards.Length);
        Assert.Equal(["electrician-tails"], guidance.Imprint!.OwnPrices);
    }

    // The same edition's answers under the guidance without the firm.
    private static System.Collections.Immutable.ImmutableArray<PlannedCost> Planned(Guidance guidance) => EditionAnswers.Of(Editions.Demo, Editions.Imprinted, EditionKind.Customer)
        .Then(a => FactDeriver.Derive(a, guidance))
        .Then(f => Planner.Plan(f, guidance, new(Home.Today, Occasion.DefaultSeed, EditionKind.Customer), new(20, 20, -1))).Value!.Costs;

    private static Staged<Guidance> WithLogo(byte[] logo) => ImprintReader.Over(Content.Guidance, new("ours.yaml", Encoding.UTF8.GetBytes(Firm + "logo: ours.svg\n")), new("ours.svg", logo));
}
