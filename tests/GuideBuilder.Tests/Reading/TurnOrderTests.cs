using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading;

/// <summary>A log in which a turn of the works day comes after what waits for it, and the letter about a visit that the log says was missed.</summary>
public sealed class TurnOrderTests
{
    private const string Semi = "home: {nation: england, kind: semi, address: 1 Elm Row}\nwish: {moves: [cutout, meter]}\nintake: {service: underground}\nplace: {kind: outside-box}\ndates: {needed-by: 2027-03-15}\n";

    private const string Missed = """
        log:
          - {on: 2026-09-01, what: applied, party: network-operator}
          - {on: 2026-09-28, what: accepted, party: network-operator}
          - {on: 2026-11-02, what: date-given, step: day-meter, party: meter-operator, date: 2026-11-19}
          - {on: 2026-11-19, what: done, step: day-cutout}
          - {on: 2026-11-19, what: done, step: day-joint}
          - {on: 2026-11-19, what: missed, step: day-meter, party: meter-operator, reference: MO-17, note: Nobody came.}

        """;

    [Fact]
    public void The_letter_about_the_visit_names_the_day_the_company_and_the_dark_house()
    {
        var letter = Home.Given(Semi + Missed).Words("letter-missed-visit");

        Assert.Contains("Reference MO-17: nobody came on Thursday 19 November 2026", letter, StringComparison.Ordinal);
        Assert.Contains("Meter operator", letter, StringComparison.Ordinal);
        Assert.Contains("without electricity since Thursday 19 November 2026", letter, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("done, step: day-board-on", "done, step: day-joint")]
    [InlineData("done, step: fill-hole", "done, step: day-release-hole")]
    public void What_waits_for_a_turn_of_the_day_cannot_be_done_before_it(string early, string late)
    {
        var answers = AnswerReader.Read(new SourceText("home.yaml", Encoding.UTF8.GetBytes($"handbook: {{format: 1, id: home}}\n{Semi}log:\n  - {{on: 2026-10-01, what: {early}}}\n  - {{on: 2026-10-02, what: {late}}}\n")), Content.Guidance);

        var fault = Assert.Single(answers.Faults, f => f.Severity == Severity.Error);
        Assert.Equal(("HB1140", 8), (fault.Code, fault.Place.Line));
    }
}
