using GuideBuilder.Model;
using NodaTime;

namespace GuideBuilder.Tests.Reading;

public sealed class HistoryTests
{
    [Fact]
    public void Papers_and_log_are_read_with_their_places()
    {
        var answers = SmallAnswers.Given("""
            papers:
              - {kind: quotation, from: network-operator, dated: 2026-10-01, valid-until: 2026-12-30, amount: "£1,180 inc VAT", covers: [operator-alteration], reference: 0012}
            log:
              - {on: 2026-09-01, what: applied, party: network-operator, reference: 1e3}
              - {on: 2026-09-20, what: date-given, step: site-visit, date: 2026-09-28}
              - {on: 2026-09-28, what: missed, step: site-visit, note: Nobody came.}
            """);
        var paper = Assert.Single(answers.Papers);

        Assert.Equal((PaperKind.Quotation, "network-operator", new LocalDate(2026, 12, 30), "0012"), (paper.Kind, paper.From, paper.ValidUntil, paper.Reference));
        Assert.Equal(new Value.Amount(Quantity.Of(1180, "£"), VatBasis.Including), paper.Amount);
        Assert.Equal(new Sourced<string>("operator-alteration", new(SmallAnswers.Path, 6, 126)), Assert.Single(paper.Covers));
        Assert.Equal([LogKind.Applied, LogKind.DateGiven, LogKind.Missed], answers.Log.Select(e => e.What));
        Assert.Equal(new LocalDate(2026, 9, 28), answers.Log[1].DateGiven);
        Assert.Equal(("1e3", "Nobody came."), (answers.Log[0].Reference, answers.Log[2].Note));
        Assert.Equal(new Place(SmallAnswers.Path, 10, 5), answers.Log[2].Place);
    }

    [Theory]
    [InlineData("papers: «none»", "HB1024")]
    [InlineData("papers: [{kind: «quote», from: network-operator}]", "HB1034")]
    [InlineData("papers: [{kind: letter, from: «network-opertor»}]", "HB1073")]
    [InlineData("papers: [{kind: letter, covers: [operator-alteration, «dig»]}]", "HB1073")]
    [InlineData("papers: [{kind: letter, dated: 2026-10-01, valid-until: «2026-09-01»}]", "HB1044")]
    [InlineData("papers: [{kind: letter, «form»: household}]", "HB1020")]
    [InlineData("papers: [{kind: letter, amount: «€700»}]", "HB1038")]
    [InlineData("log: [«{what: noted}»]", "HB1021")]
    [InlineData("log: [{on: 2026-09-01, what: «finished», step: site-visit}]", "HB1034")]
    [InlineData("log: [{on: 2026-09-01, what: done, step: «site-vist»}]", "HB1073")]
    [InlineData("log: [«{on: 2026-09-01, what: done}»]", "HB1058")]
    [InlineData("log: [«{on: 2026-09-01, what: paid}»]", "HB1058")]
    [InlineData("log: [«{on: 2026-09-01, what: quoted}»]", "HB1058")]
    [InlineData("log: [«{on: 2026-09-01, what: date-given, step: site-visit}»]", "HB1058")]
    [InlineData("log: [{on: 2026-09-01, what: noted, date: «2026-09-02»}]", "HB1059")]
    [InlineData("log: [{on: 2026-09-02, what: date-given, step: site-visit, date: «2026-09-01»}]", "HB1044")]
    [InlineData("log: [{on: 2026-09-02, what: quoted, party: network-operator, valid-until: «2026-09-01»}]", "HB1044")]
    [InlineData("log: [«{on: 2026-09-02, what: missed, step: site-visit}»]", "HB1048")]
    [InlineData("log:\n  - {on: 2026-05-09, what: quoted, party: network-operator}\n  - «{on: 2026-05-03, what: accepted, party: network-operator}»", "HB1045")]
    [InlineData("log:\n  - «{on: 2026-05-03, what: quoted, party: network-operator}»\n  - {on: 2026-05-09, what: applied, party: network-operator}", "HB1045")]
    [InlineData("log:\n  - {on: 2026-05-03, what: done, step: site-visit}\n  - «{on: 2026-05-09, what: done, step: site-visit}»", "HB1046")]
    [InlineData("log:\n  - {on: 2026-05-03, what: done, step: site-visit}\n  - «{on: 2026-05-09, what: date-given, step: site-visit, date: 2026-05-20}»", "HB1047")]
    public void A_wrong_entry_is_found_where_it_stands(string lines, string code) => SmallAnswers.Finds(lines, code);

    [Theory]
    [InlineData("log:\n  - {on: 2026-05-03, what: quoted, party: network-operator}\n  - {on: 2026-05-09, what: accepted, party: network-operator}")]
    [InlineData("log:\n  - {on: 2026-05-09, what: quoted, party: network-operator}\n  - {on: 2026-05-03, what: accepted, party: household}")]
    [InlineData("log: [{on: 2026-05-03, what: accepted, party: network-operator}]")]
    [InlineData("log: [{on: 2026-05-03, what: quoted, party: network-operator}, {on: 2026-06-01, what: accepted, party: network-operator}, {on: 2026-07-01, what: quoted, party: network-operator}]")]
    [InlineData("log: [{on: 2026-05-03, what: paid, amount: £500}]")]
    [InlineData("log: [{on: 2026-05-03, what: done, step: site-visit}, {on: 2026-05-01, what: date-given, step: site-visit, date: 2026-05-03}]")]
    public void What_can_have_happened_is_none_the_worse(string lines) => Assert.Empty(SmallAnswers.Read(SmallAnswers.Around(lines)).Faults);

    [Fact]
    public void Sums_are_in_the_currency_of_the_nation() =>
        SmallAnswers.FindsIn("handbook: {format: 1}\nwish: {moves: [meter]}\nhome: {nation: ireland}\nlog: [{on: 2026-05-03, what: paid, amount: €500}, {on: 2026-05-03, what: paid, amount: «£500»}]", "HB1038");
}
