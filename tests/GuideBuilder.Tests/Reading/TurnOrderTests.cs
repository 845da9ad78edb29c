using System.Text;
using GuideBuilder.Model;
using GuideBuilder.Reading;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Reading;

/// <summary>A log in which a turn of the works day comes after what waits for it.</summary>
public sealed class TurnOrderTests
{
    private const string Semi = "home: {nation: england, kind: semi, address: 1 Elm Row}\nwish: {moves: [cutout, meter]}\nintake: {service: underground}\nplace: {kind: outside-box}\ndates: {needed-by: 2027-03-15}\n";

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
