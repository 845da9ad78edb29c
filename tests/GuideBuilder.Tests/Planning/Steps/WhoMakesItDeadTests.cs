using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>The house goes off at one turn, and that turn says who does it; the turn that brings it back says who puts the fuse in.</summary>
public sealed class WhoMakesItDeadTests
{
    private const string Known = "intake: {service: underground, signs: none, isolator: none, looped: no";

    public static TheoryData<string, string, string> Days => new()
    {
        { "home: {nation: england}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\n" + Known + "}", "day-fuse-out", "network-operator" },
        { "home: {nation: england}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\n" + Known + ", fuse-plan: electrician}", "day-fuse-out", "network-operator" },
        { "home: {nation: wales}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\noperator: {meter-off-first: yes, meter-carried: no}\n" + Known + "}", "day-meter-off", "meter-operator" },
        { "home: {nation: ireland}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\n" + Known + "}", "day-fuse-out", "network-operator" },
        { "home: {nation: scotland}\nwish: {moves: [meter], way: meter-only-same-wall}\nplace: {kind: same-wall}\n" + Known + "}", "day-meter", "meter-operator" },
        { "home: {nation: northern-ireland}\nwish: {moves: [meter], way: meter-only-same-wall}\nplace: {kind: same-wall}\n" + Known + "}", "day-meter-by-networks", "network-operator" },
        { "home: {nation: england}\nwish: {moves: [board]}\n" + Known + "}", "day-make-dead", "network-operator" },
        { "home: {nation: england}\nwish: {moves: [board]}\n" + Known.Replace("isolator: none", "isolator: all-pole, phases: single", StringComparison.Ordinal) + "}", "day-board-work", "electrician" },
        { "home: {nation: england}\nwish: {moves: [cutout, meter], way: temporary-and-back}\nplace: {kind: temporary}\n" + Known + "}", "day-fuse-out", "network-operator" },
    };

    [Theory]
    [MemberData(nameof(Days))]
    public void The_first_turn_without_supply_says_who_makes_the_house_dead(string answers, string turn, string party)
    {
        var home = Home.Given(answers);

        foreach (var day in home.Plan.Schedule.Meetings)
        {
            var first = home.Plan.Steps.Single(s => s.Step.Item.Id == day.Turns.First(t => t.SupplyOff).Step).Step.Item;
            var words = home.Words(first.Id);
            Assert.Matches("fuse out|fuse is out|isolator that cuts every wire", words);
            Assert.NotEqual(Party.Household, first.Party);
            if (day.Meeting == "works-day")
            {
                Assert.Equal((turn, party), (first.Id, first.Party));
            }
        }

        Assert.NotEmpty(home.Plan.Schedule.Meetings);
    }

    [Fact]
    public void Nothing_is_worked_on_at_the_old_intake_before_its_fuse_is_out()
    {
        var steps = Content.Guidance.Steps.ToDictionary(s => s.Id, StringComparer.Ordinal);

        Assert.All(["day-cutout", "day-joint", "day-overhead"], id => Assert.Contains(steps[id].After, l => l is { Step: "day-fuse-out", SameDay: true }));
        Assert.All(["day-cutout", "day-joint", "day-overhead", "day-meter"], id => Assert.True(steps["day-fuse-out"].Order < steps[id].Order, id));
    }

    [Theory]
    [InlineData("day-meter")]
    [InlineData("day-meter-carried")]
    [InlineData("day-meter-by-networks")]
    public void Who_connects_the_meter_takes_the_old_one_off_and_puts_the_fuse_in(string step)
    {
        var about = Content.Guidance.Steps.Single(s => s.Id == step).About.Words;

        Assert.Matches("takes the old meter off", about);
        Assert.Matches("puts the fuse in", about);
    }
}
