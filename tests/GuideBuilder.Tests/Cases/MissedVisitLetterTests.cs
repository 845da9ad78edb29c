using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>The letter about a visit that the log says was missed: what it takes from the log, and what it leaves there.</summary>
public sealed class MissedVisitLetterTests
{
    private const string Semi = "home: {nation: england, kind: semi, address: 1 Elm Row}\nwish: {moves: [cutout, meter]}\nintake: {service: underground}\nplace: {kind: outside-box}\ndates: {needed-by: 2027-03-15}\n";

    private const string Missed = """
        log:
          - {on: 2026-09-01, what: applied, party: network-operator}
          - {on: 2026-09-28, what: accepted, party: network-operator}
          - {on: 2026-11-02, what: date-given, step: day-meter, party: meter-operator, date: 2026-11-19}
          - {on: 2026-11-19, what: done, step: day-cutout}
          - {on: 2026-11-19, what: done, step: day-joint}
          - {on: 2026-11-19, what: missed, step: day-meter, party: meter-operator, reference: MO-17, note: My mother needs her lift.}

        """;

    [Fact]
    public void The_letter_about_the_visit_names_the_day_the_company_and_the_dark_house()
    {
        var letter = Home.Given(Semi + Missed).Words("letter-missed-visit");

        Assert.Contains("Reference MO-17: nobody came on Thursday 19 November 2026", letter, StringComparison.Ordinal);
        Assert.Contains("Meter operator", letter, StringComparison.Ordinal);
        Assert.Contains("The power: off since Thursday 19 November 2026.", letter, StringComparison.Ordinal);
        Assert.DoesNotContain("My mother needs her lift", letter, StringComparison.Ordinal);
    }
}
