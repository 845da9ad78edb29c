using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>A day that broke off after the joint, on Friday 29 January 2027; today is the Monday after it.</summary>
public sealed class BrokenDayTests
{
    private static readonly LocalDate Day = new(2027, 1, 29);

    private static readonly Guidance Guidance = Small.Empty with
    {
        Parties = [.. Small.Empty.Parties, Small.Party("meter"), Small.Party("neighbour")],
        Steps =
        [
            Small.Step("register", 15, "household"),
            Small.Step("slot", 18, "meter"),
            Small.Step("neighbour-agrees", 20, "neighbour"),
            Small.Step("ring", 1, "household") with { EachTime = true, NoLaterThan = [new("meter", 7, DayCount.CalendarDays, null, Place.None) { WherePossible = true }], After = [Small.After("register") with { NotOnceBegun = true }] },
            Small.Turn("joint", "operator", 1) with { After = [Small.After("ring")] },
            Small.Turn("unloop", "operator", 2) with { After = [Small.After("neighbour-agrees"), SameDay("joint")], ApartAfter = ["joint"], DoneWith = ["joint"] },
            Small.Turn("release", "operator", 3) with { After = [SameDay("joint"), SameDay("unloop")], ApartAfter = ["joint"] },
            Small.Turn("meter", "meter", 4) with { After = [Small.After("ring"), Small.After("slot"), SameDay("release")], Again = Small.Takes(DayCount.WorkingDays, 1, 4, 9) },
            Small.Turn("tests", "electrician", 5) with { After = [SameDay("meter")] },
            Small.Step("fill", 1, "household", ["release"]),
        ],
    };

    [Fact]
    public void What_brings_supply_back_waits_for_the_call_to_the_crews_and_for_the_one_that_was_missing() =>
        Assert.Equal("ring 1/2, meter 4/2, tests 4/2", Days(Plan(Missed), "ring", "meter", "tests"));

    [Fact]
    public void The_release_of_the_hole_stays_with_the_joint() => Assert.Equal("release 1/2, fill 2/2", Days(Plan(Missed), "release", "fill"));

    [Fact]
    public void A_loop_that_nobody_speaks_of_went_out_with_the_joint() => Assert.True(Dates(Plan(Missed), "unloop").Done);

    [Fact]
    public void A_loop_that_was_left_in_waits_for_the_neighbour_and_holds_nobody_up()
    {
        var plan = Plan([.. Missed, Small.Event(Day, LogKind.Missed, "unloop")]);

        Assert.False(Dates(plan, "unloop").Done);
        Assert.Equal("unloop 1/3, meter 4/2, tests 4/2", Days(plan, "unloop", "meter", "tests"));
    }

    [Fact]
    public void A_day_that_has_not_begun_waits_for_everything() => Assert.Equal("joint 1/3, meter 1/3, release 1/3", Days(Plan([]), "joint", "meter", "release"));

    private static LogEvent[] Missed => [Small.Event(Day, LogKind.Done, "joint"), Small.Event(Day, LogKind.Missed, "meter")];

    private static Link SameDay(string step) => Small.After(step) with { SameDay = true };

    private static Plan Plan(LogEvent[] log) => Small.Plan(Guidance, Small.Answers(Guidance) with { Log = [.. log] });

    private static StepDates Dates(Plan plan, string step) => plan.Steps.Single(s => s.Step.Item.Id == step).Dates!;

    private static string Days(Plan plan, params string[] steps) => string.Join(", ", steps.Select(s => $"{s} {Dates(plan, s).EarliestStart.Day}/{Dates(plan, s).EarliestStart.Month}"));
}
