using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>What guards people on the day without power has to be done before it, and no latest date may say otherwise.</summary>
public sealed class BeforeTheDayTests
{
    private const string Needs = "people: {medical-equipment: yes, telecare: yes, stairlift: yes, frail-or-baby: yes}\nintake: {service: underground, signs: none, key-elsewhere: yes}\ndates: {needed-by: 2027-12-15}\n";

    public static TheoryData<string> Homes =>
    [
        "home: {nation: england, kind: semi}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\n" + Needs,
        "home: {nation: england, kind: semi}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\nground: {who-digs: household}\n" + Needs,
        "home: {nation: ireland, kind: semi}\nwish: {moves: [cutout, meter]}\nplace: {kind: inside-elsewhere}\n" + Needs,
        "home: {nation: northern-ireland, kind: semi}\nwish: {moves: [meter]}\nplace: {kind: same-wall}\n" + Needs,
        "home: {nation: scotland, kind: semi}\nwish: {moves: [board]}\n" + Needs,
    ];

    [Theory]
    [MemberData(nameof(Homes))]
    public void The_register_the_telecare_firm_and_the_key_holder_come_before_the_day_with_days_to_spare(string answers)
    {
        var plan = Home.Given(answers).Plan;
        var day = plan.Steps.Where(s => s is { Step.Item.Meeting: "works-day", Dates: not null }).Min(s => s.Dates!.LatestStart);

        foreach (var id in (string[])["tell-priority-register", "tell-telecare", "ask-key-holder"])
        {
            var dates = plan.Steps.Single(s => s.Step.Item.Id == id).Dates;
            Assert.True(dates is not null, $"{id} has no date");
            Assert.True(dates.LatestFinish.PlusDays(5) <= day, $"{id} may end on {dates.LatestFinish}, the day is at the latest on {day}");
        }
    }

    [Fact]
    public void The_first_demo_home_has_none_either() => Findings.AreNone(LeftUntilAfter(Home.At("answers/avebury-close.yaml").Plan));

    [Theory]
    [MemberData(nameof(Homes))]
    public void Nothing_of_the_household_that_does_not_wait_for_the_day_may_be_left_until_after_it(string answers) => Findings.AreNone(LeftUntilAfter(Home.Given(answers).Plan));

    private static IEnumerable<string> LeftUntilAfter(Plan plan)
    {
        var day = plan.Steps.Where(s => s is { Step.Item.Meeting: "works-day", Dates: not null }).Min(s => s.Dates!.LatestStart);
        var after = After(plan);
        return plan.Steps
            .Where(s => s is { Step.Item: { IsDuty: true, Meeting: null }, Dates: { Done: false } } && !after.Contains(s.Step.Item.Id) && s.Dates.LatestFinish >= day)
            .Select(s => $"{s.Step.Item.Id} may end on {s.Dates!.LatestFinish}, the day is at the latest on {day}");
    }

    // Every step that waits, through others, for a turn of the day.
    private static HashSet<string> After(Plan plan)
    {
        var found = plan.Steps.Where(s => s.Step.Item.Meeting is not null).Select(s => s.Step.Item.Id).ToHashSet(StringComparer.Ordinal);
        while (plan.Steps.Select(s => s.Step.Item).Any(s => !found.Contains(s.Id) && s.After.Any(l => found.Contains(l.Step)) && found.Add(s.Id)))
        {
        }

        return found;
    }
}
