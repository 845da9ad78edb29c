using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Costs;

public sealed class QuotationTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("a.deep")],
        Costs = [Small.Cost("alteration"), Small.Cost("dig"), Small.Cost("tails", "electrician"), Small.Cost("shoring", "builder", when: Small.Is("a.deep", "no"))],
        Tables = Small.Empty.Tables with { Prices = [Small.Price("price", 100, 200, 300)], Vat = [Small.Vat("standard", 0.2m)] },
    };

    [Fact]
    public void A_quotation_replaces_the_estimate_of_the_line_it_covers() =>
        Assert.Equal("alteration 1180, dig 240, tails 240", Lines([Paper(1180, covers: ["alteration"])]));

    [Fact]
    public void One_sum_for_several_lines_stands_once() =>
        Assert.Equal("alteration 1180, dig 0, tails 240", Lines([Paper(1180, covers: ["alteration", "dig"])]));

    [Fact]
    public void A_quotation_that_names_no_lines_covers_its_partys_but_those_it_leaves_out() =>
        Assert.Equal("alteration 1180, dig 240, tails 240", Lines([Paper(1180, leavesOut: ["dig"])]));

    [Fact]
    public void A_quotation_excluding_vat_has_it_added() =>
        Assert.Equal("alteration 1200, dig 240, tails 240", Lines([Paper(1000, covers: ["alteration"]) with { Amount = Pounds(1000, VatBasis.Excluding) }]));

    [Fact]
    public void The_later_quotation_counts() =>
        Assert.Equal(
            "alteration 1300, dig 240, tails 240",
            Lines([Paper(1300, covers: ["alteration"]) with { Dated = new(2027, 1, 9) }, Paper(1180, covers: ["alteration"]) with { Dated = new(2027, 1, 8) }]));

    [Fact]
    public void A_quotation_past_its_term_counts_only_if_it_was_accepted_within_it()
    {
        var stale = Paper(1180, covers: ["alteration"]) with { ValidUntil = Small.Today.PlusDays(-1) };
        var accepted = Small.Event(Small.Today.PlusDays(-9), LogKind.Accepted, party: "operator");

        Assert.Equal("alteration 240, dig 240, tails 240", Lines([stale]));
        Assert.Equal("alteration 1180, dig 240, tails 240", Lines([stale], accepted));
        Assert.Equal("alteration 240, dig 240, tails 240", Lines([stale], accepted with { On = Small.Today }));
    }

    [Fact]
    public void A_quotation_in_the_log_covers_the_lines_of_its_party() =>
        Assert.Equal(
            "alteration 240, dig 240, tails 500",
            Lines([], Small.Event(Small.Today, LogKind.Quoted, party: "electrician") with { Amount = Pounds(500, VatBasis.Including) }));

    [Fact]
    public void A_line_that_a_quotation_names_is_added_though_it_was_open() =>
        Assert.Equal("alteration 240, dig 240, tails 240, shoring 90", Lines([Paper(90, "builder", covers: ["shoring"])]));

    [Fact]
    public void A_certificate_replaces_nothing() =>
        Assert.Equal("alteration 240, dig 240, tails 240", Lines([Paper(1180, covers: ["alteration"]) with { Kind = PaperKind.Certificate }]));

    private static string Lines(Paper[] papers, params LogEvent[] log)
    {
        var plan = Small.Plan(Guidance, Small.Answers(Guidance) with { Papers = [.. papers], Log = [.. log] });
        return string.Join(", ", plan.Costs.Where(c => c.Added).Select(c => FormattableString.Invariant($"{c.Cost.Item.Id} {c.Gross.Likely:0.##}")));
    }

    private static Value.Amount Pounds(decimal sum, VatBasis stated) => new(Quantity.Of(sum, "£"), stated);

    private static Paper Paper(decimal sum, string from = "operator", string[]? covers = null, string[]? leavesOut = null) => new(
        PaperKind.Quotation, from, Small.Today, null, Pounds(sum, VatBasis.Including),
        [.. (covers ?? []).Select(c => new Sourced<string>(c, Place.None))],
        [.. (leavesOut ?? []).Select(c => new Sourced<string>(c, Place.None))],
        null, Place.None);
}
