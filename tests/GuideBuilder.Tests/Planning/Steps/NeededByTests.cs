using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using NodaTime;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>An order of at least 2, likely 5, at most 10 working days from Monday 1 February 2027, then a meeting, then a month's watch.</summary>
public sealed class NeededByTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.Question("dates.needed-by", QuestionKind.Date), Small.Question("works.room-needed-by", QuestionKind.Date), Small.Question("dates.start-from", QuestionKind.Date)],
        Steps =
        [
            Small.Step("order", 5) with { Takes = Small.Takes(DayCount.WorkingDays, 2, 5, 10) },
            Small.Turn("joint", "operator", 1) with { After = [Small.After("order")] },
            Small.Step("watch", 0) with { Takes = Small.Takes(DayCount.CalendarDays, 30, 30, 30), After = [Small.After("joint")] },
        ],
    };

    [Theory]
    [InlineData(15, Feasibility.MetEvenIfSlow)]
    [InlineData(14, Feasibility.MetIfLikely)]
    [InlineData(8, Feasibility.MetIfLikely)]
    [InlineData(7, Feasibility.OnlyIfQuick)]
    [InlineData(3, Feasibility.OnlyIfQuick)]
    [InlineData(2, Feasibility.NotPossible)]
    public void Whether_the_date_can_be_met_is_judged_on_the_meeting(int day, Feasibility feasibility)
    {
        var schedule = Plan(("dates.needed-by", new LocalDate(2027, 2, day))).Schedule;

        Assert.Equal(feasibility, schedule.Feasibility);
        Assert.Equal(new(2027, 2, 8), schedule.Finish.Likely);
    }

    [Theory]
    [InlineData(15, 8)]
    [InlineData(5, -2)]
    public void The_last_safe_day_to_apply_follows_from_the_date(int day, int safe)
    {
        var applying = Guidance with { Steps = [Small.Step("apply", 0, "household") with { LoggedAs = new(LogKind.Applied, "operator") }, Guidance.Steps[0] with { After = [Small.After("apply")] }, .. Guidance.Steps[1..]] };

        Assert.Equal(new LastSafeDay("apply", new LocalDate(2027, 2, 1).PlusDays(safe - 1)), Small.Plan(applying, ("dates.needed-by", new LocalDate(2027, 2, day))).Schedule.LastSafe);
    }

    [Fact]
    public void Where_the_date_is_missed_the_smallest_change_is_named()
    {
        Assert.Equal(new SmallestChange(ChangeOf.Duration, "order", null, 1), Plan(("dates.needed-by", new LocalDate(2027, 2, 5))).Schedule.Change);
        Assert.Null(Plan(("dates.needed-by", new LocalDate(2027, 2, 15))).Schedule.Change);
    }

    [Fact]
    public void Without_a_date_nothing_is_judged_and_the_plans_own_finish_sets_the_latest_dates()
    {
        var plan = Plan();

        Assert.Equal(Feasibility.NoDate, plan.Schedule.Feasibility);
        Assert.Equal([0, 0, 0], plan.Steps.Select(s => s.Dates!.TotalFloat));
    }

    [Fact]
    public void The_earlier_of_the_two_dates_counts() =>
        Assert.Equal(new LocalDate(2027, 3, 1), Plan(("dates.needed-by", new LocalDate(2027, 3, 9)), ("works.room-needed-by", new LocalDate(2027, 3, 1))).Schedule.NeededBy);

    [Fact]
    public void A_place_that_must_be_free_waits_for_what_frees_it_and_of_two_dates_the_tighter_counts()
    {
        var guidance = Guidance with { Steps = [.. Guidance.Steps, Small.Step("old-gone", 5, after: ["joint"]) with { FreesPlace = true }] };
        Schedule Of(LocalDate? power, LocalDate? place) => Small.Plan(guidance, [.. power is { } p ? [("dates.needed-by", (object)p)] : Array.Empty<(string, object)>(), .. place is { } r ? [("works.room-needed-by", (object)r)] : Array.Empty<(string, object)>()]).Schedule;
        var on = Of(null, new(2027, 6, 1));
        var late = on.ReadyOn!.Value;

        Assert.True(late > on.BaseFinish);
        Assert.Equal((NeededFor.PlaceFree, Feasibility.MetEvenIfSlow), (on.NeededFor, on.Feasibility));
        Assert.Equal((new(2027, 2, 15), Feasibility.OnlyIfQuick), (late, Of(null, late.PlusDays(-1)).Feasibility));
        Assert.Equal("old-gone", Of(null, late.PlusDays(-1)).DrivingSteps[^1]);
        Assert.Equal((NeededFor.PowerOn, on.BaseFinish), (Of(on.BaseFinish, late.PlusDays(9)).NeededFor, Of(on.BaseFinish, late.PlusDays(9)).ReadyOn));
        Assert.Equal((NeededFor.PlaceFree, late), (Of(late, late).NeededFor, Of(late, late).ReadyOn));
    }

    [Fact]
    public void A_later_date_leaves_float_before_the_meeting()
    {
        var plan = Plan(("dates.needed-by", new LocalDate(2027, 2, 10)));

        Assert.Equal([2, 2], plan.Steps.Take(2).Select(s => s.Dates!.TotalFloat));
        Assert.Equal(new(2027, 2, 10), plan.Steps[1].Dates!.LatestStart);
    }

    [Fact]
    public void A_missed_date_makes_float_negative() =>
        Assert.Equal(-1, Plan(("dates.needed-by", new LocalDate(2027, 2, 7))).Steps[0].Dates!.TotalFloat);

    [Fact]
    public void To_book_by_is_the_latest_start_less_the_notice_asked()
    {
        var guidance = Guidance with { Steps = [Guidance.Steps[0], Guidance.Steps[1] with { After = [Small.After("order"), Small.After("order", 3, "operator")] }] };

        Assert.Equal(new(2027, 2, 11), Small.Plan(guidance, ("dates.needed-by", new LocalDate(2027, 2, 17))).Steps[1].Dates!.BookBy);
    }

    [Fact]
    public void Nothing_starts_before_the_day_from_which_the_household_wishes_to_start() =>
        Assert.Equal(new(2027, 3, 1), Plan(("dates.start-from", new LocalDate(2027, 3, 1))).Schedule.Start);

    private static Plan Plan(params (string, object)[] given) => Small.Plan(Guidance, given);
}
