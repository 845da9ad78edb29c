using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Planning.Sequence;

public sealed class LogTests
{
    private static readonly Activity Done = Does("a", 2, Week("w")) with { PinnedStart = Zero.PlusDays(-20), PinnedFinish = Zero.PlusDays(-16) };
    private static readonly Activity Given = Does("b", 1, Week("w")) with { PinnedStart = Zero.PlusDays(15) };

    [Fact]
    public void What_is_done_keeps_its_dates_whatever_calendars_and_links_say()
    {
        var outcome = Sequencer.Solve(Of([Does("z", 5), Done], [After("a", "z")]), Zero, null);

        Assert.Equal((Done.PinnedStart!.Value, Done.PinnedFinish!.Value), (outcome.Forward["a"].Start, outcome.Forward["a"].Finish));
        Assert.Equal(new(DriverKind.Done, null, null, Done.PinnedStart.Value), outcome.Forward["a"].Driver);
        Assert.Equal((Done.PinnedStart.Value, Done.PinnedFinish.Value), (outcome.Latest!["a"].Start, outcome.Latest["a"].Finish));
        Assert.Equal((0, 0), (outcome.Floats!.Activities[1].Total, outcome.Floats.Activities[1].Free));
        Assert.Empty(outcome.Forward.Conflicts);
        Assert.Equal(Zero.PlusDays(4), outcome.Forward.Finish);
    }

    [Fact]
    public void What_is_done_bounds_its_followers_but_not_what_came_before_it()
    {
        var outcome = Sequencer.Solve(Of([Does("z", 1), Done, Does("f", 1)], [After("a", "z"), After("f", "a", lag: 30)]), Zero, Zero.PlusDays(60));

        Assert.Equal(Zero.PlusDays(15), outcome.Forward["f"].Start);
        Assert.Equal(Zero.PlusDays(60), outcome.Latest!["z"].Start);
    }

    [Fact]
    public void A_given_date_is_both_earliest_and_latest_and_bounds_what_comes_before_and_after()
    {
        var outcome = Sequencer.Solve(Of([Does("z", 1), Given, Does("f", 1)], [After("b", "z"), After("f", "b")]), Zero, Zero.PlusDays(60));

        Assert.Equal((Given.PinnedStart!.Value, Given.PinnedStart.Value), (outcome.Forward["b"].Start, outcome.Latest!["b"].Start));
        Assert.Equal(Zero.PlusDays(14), outcome.Latest["z"].Start);
        Assert.Equal(Zero.PlusDays(16), outcome.Forward["f"].Start);
        Assert.Equal((Verdict.Met, true), (outcome.Verdict, outcome.Forward.Conflicts.IsEmpty));
    }

    [Fact]
    public void A_given_date_that_cannot_be_met_stays_with_its_conflict_and_chain()
    {
        var forward = Sequencer.Forward(Of([Does("y", 8), Does("z", 20), Given], [After("z", "y"), After("b", "z")]), Zero);

        var conflict = Assert.Single(forward.Conflicts);
        Assert.Equal(Given.PinnedStart, forward["b"].Start);
        Assert.Equal(("b", Given.PinnedStart!.Value, new LocalDate(2026, 4, 27)), (conflict.Id, conflict.Given, conflict.Earliest));
        Assert.Equal(["y", "z"], conflict.Chain.Select(t => t.Id));
    }

    [Fact]
    public void A_given_date_takes_the_rest_of_its_group_with_it()
    {
        var forward = Sequencer.Forward(Of([Does("x", 1, group: "g"), Given with { Group = "g" }]), Zero);

        Assert.Equal(Given.PinnedStart, forward["x"].Start);
        Assert.Equal(DriverKind.Given, forward["x"].Driver.Kind);
    }

    [Fact]
    public void Two_given_dates_within_a_group_stay_and_both_are_in_conflict()
    {
        var forward = Sequencer.Forward(Of([Given with { Group = "g" }, Given with { Id = "c", Group = "g", PinnedStart = Zero.PlusDays(16) }, Does("x", 1, group: "g")]), Zero);

        Assert.Equal([15, 16, 16], forward.Timings.Select(t => Period.DaysBetween(Zero, t.Start)));
        Assert.Equal(["b", "c", "x"], forward.Conflicts.Select(c => c.Id));
    }

    [Fact]
    public void A_member_that_is_done_no_longer_holds_its_group_to_its_day()
    {
        var forward = Sequencer.Forward(Of([Done with { Group = "g" }, Does("x", 1, Week("w"), "g"), Does("y", 1, Week("w"), "g", notBefore: Zero.PlusDays(3))]), Zero);

        Assert.Equal(new LocalDate(2026, 4, 2), forward["x"].Start);
        Assert.Equal(forward["x"].Start, forward["y"].Start);
    }

    [Fact]
    public void What_comes_too_long_after_something_done_is_an_obstacle()
    {
        var obstacle = Assert.Single(Sequencer.Forward(Of([Done, Does("f", 1)], [], new Maximal("a", "f", 10, Every)), Zero).Obstacles);

        Assert.Equal((ObstacleKind.TooLate, "f", "a"), (obstacle.Kind, obstacle.Id, obstacle.Other));
        Assert.Equal((Zero, Done.PinnedFinish!.Value.PlusDays(11)), (obstacle.Earliest, obstacle.Latest));
    }

    [Fact]
    public void A_date_given_for_a_closed_day_stands_and_is_in_conflict()
    {
        var forward = Sequencer.Forward(Of([Given with { PinnedStart = new(2026, 4, 12) }]), Zero);

        Assert.Equal((new LocalDate(2026, 4, 12), new LocalDate(2026, 4, 12)), (forward["b"].Start, forward["b"].Finish));
        Assert.Null(Assert.Single(forward.Conflicts).Earliest);
    }
}
