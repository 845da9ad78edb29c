using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Published;

/// <summary>Three crews that must come on one day. Derived by hand on the calendar of 2026, the day of the visits also by a constraint solver.</summary>
public sealed class SameDayCases
{
    private static Network Visits(WorkingCalendarKind kind = WorkingCalendarKind.Meeting)
    {
        var plain = Week("plain");
        var second = Week("second", IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday);
        var third = kind == WorkingCalendarKind.Meeting
            ? Week("third", IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday)
            : Week("third", IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday);
        string[] visits = ["x", "y", "z"];
        return Of(
            [Does("a", 2, plain), Does("b", 10, plain), Does("c", 15, plain), Does("x", 1, plain, "visit"), Does("y", 1, second, "visit"), Does("z", 1, third, "visit"), Does("f", 1, plain), Does("g", 3, plain)],
            [.. from v in visits from p in new[] { "a", "b", "c" } select After(v, p), .. visits.Select(v => After("f", v)), After("g", "f")]);
    }

    private enum WorkingCalendarKind
    {
        Meeting,
        Apart,
    }

    [Fact]
    public void The_visits_fall_on_the_first_day_that_all_three_can()
    {
        var forward = Sequencer.Forward(Visits(), Zero);

        Assert.Equal((new LocalDate(2026, 3, 30), new LocalDate(2026, 3, 31)), Span(forward["a"]));
        Assert.Equal((new LocalDate(2026, 3, 30), new LocalDate(2026, 4, 14)), Span(forward["b"]));
        Assert.Equal((new LocalDate(2026, 3, 30), new LocalDate(2026, 4, 21)), Span(forward["c"]));
        Assert.All(new[] { "x", "y", "z" }, v => Assert.Equal(new LocalDate(2026, 4, 23), forward[v].Start));
        Assert.Equal(new LocalDate(2026, 4, 24), forward["f"].Start);
        Assert.Equal((new LocalDate(2026, 4, 27), new LocalDate(2026, 4, 29)), Span(forward["g"]));
        Assert.True(forward.IsPossible);
    }

    [Fact]
    public void Against_a_later_deadline_the_latest_dates_and_floats_are_those_worked_out_by_hand()
    {
        var outcome = Sequencer.Solve(Visits(), Zero, new(2026, 5, 15));

        Assert.Equal(Verdict.Met, outcome.Verdict);
        Assert.Equal(new(2026, 5, 13), outcome.Latest!["g"].Start);
        Assert.Equal(new(2026, 5, 12), outcome.Latest["f"].Start);
        Assert.Equal(new(2026, 5, 7), outcome.Latest["x"].Start);
        Assert.Equal([23, 15, 10], outcome.Floats!.Activities.Take(3).Select(f => f.Total));
        Assert.Equal(11, outcome.Margin);
    }

    [Fact]
    public void The_shared_days_between_the_early_and_the_late_one_are_listed()
    {
        var outcome = Sequencer.Solve(Visits(), Zero, new(2026, 5, 15));
        var alone = Sequencer.Solve(Of(Visits().Activities.Where(a => a.Group is not null)), new(2026, 4, 20), new(2026, 5, 7));

        Assert.Equal([new(2026, 4, 28), new(2026, 4, 30), new(2026, 5, 5), new(2026, 5, 7)], Assert.Single(outcome.Floats!.Groups).Days);
        Assert.Equal(new(2026, 4, 21), alone.Forward["x"].Start);
        Assert.Equal([new(2026, 4, 23), .. Assert.Single(outcome.Floats!.Groups).Days], Assert.Single(alone.Floats!.Groups).Days);
    }

    [Fact]
    public void What_decides_the_day_can_still_have_a_day_to_spare()
    {
        var outcome = Sequencer.Solve(Visits(), Zero, null);

        Assert.Equal(1, outcome.Floats!.Activities[2].Total);
        Assert.Equal(["c", "x", "f", "g"], outcome.DrivingChain.Select(t => t.Id));
    }

    [Fact]
    public void A_deadline_one_day_too_soon_is_missed_by_one_working_day_and_the_chain_names_the_cause()
    {
        var outcome = Sequencer.Solve(Visits(), Zero, new(2026, 4, 28));

        Assert.Equal(Verdict.Missed, outcome.Verdict);
        Assert.Equal(-1, outcome.Margin);
        Assert.Equal(["c", "x"], outcome.DrivingChain.Take(2).Select(t => t.Id));
    }

    [Fact]
    public void Crews_that_never_work_on_one_day_are_named()
    {
        var obstacle = Assert.Single(Sequencer.Forward(Visits(WorkingCalendarKind.Apart), Zero).Obstacles);

        Assert.Equal((ObstacleKind.NeverMeet, "y", "z"), (obstacle.Kind, obstacle.Id, obstacle.Other));
    }

    private static (LocalDate Start, LocalDate Finish) Span(Timing timing) => (timing.Start, timing.Finish);
}
