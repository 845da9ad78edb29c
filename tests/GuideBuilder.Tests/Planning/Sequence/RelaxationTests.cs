using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Planning.Sequence;

public sealed class RelaxationTests
{
    private static readonly Network Chain = Of([Does("a", 5), Does("b", 10, notBefore: Zero.PlusDays(8)), Does("c", 3)], [After("b", "a", lag: 4), After("c", "b")]);

    [Fact]
    public void Where_nothing_is_wrong_nothing_is_to_be_changed() => Assert.Null(Relaxation.Smallest(Chain, Zero, Zero.PlusDays(21)));

    [Theory]
    [InlineData(20, ChangeKind.ShorterWait, "b", "a", 1)]
    [InlineData(19, ChangeKind.ShorterDuration, "b", null, 2)]
    [InlineData(14, ChangeKind.ShorterDuration, "b", null, 7)]
    public void The_smallest_change_that_would_do_is_found(int deadline, ChangeKind kind, string id, string? other, int days) =>
        Assert.Equal(new(kind, id, other, days), Relaxation.Smallest(Chain, Zero, Zero.PlusDays(deadline)));

    [Fact]
    public void Every_change_offered_does_and_a_day_less_of_it_does_not()
    {
        var all = Relaxation.All(Chain, Zero, Zero.PlusDays(20));

        Assert.Equal([ChangeKind.ShorterWait, ChangeKind.ShorterDuration, ChangeKind.ShorterDuration, ChangeKind.ShorterDuration], all.Select(c => c.Kind));
        Assert.All(all, c => Assert.Equal(1, c.Days));
    }

    [Fact]
    public void A_finish_by_day_and_a_validity_that_cannot_be_kept_may_be_moved()
    {
        var late = Of([Does("a", 1), Does("b", 5, finishBy: Zero.PlusDays(3))], [After("b", "a")]);
        var stale = Of([Does("q", 0) with { PinnedFinish = Zero.PlusDays(-95) }, Does("b", 1)], [], new Maximal("q", "b", 90, Every));

        Assert.Equal(new(ChangeKind.ShorterDuration, "b", null, 2), Relaxation.Smallest(late, Zero, null));
        Assert.Contains(new(ChangeKind.LaterFinish, "b", null, 2), Relaxation.All(late, Zero, null));
        Assert.Equal(new(ChangeKind.LongerValidity, "b", "q", 5), Relaxation.Smallest(stale, Zero, null));
    }

    [Fact]
    public void Crews_that_never_meet_are_helped_only_by_other_weekdays()
    {
        var apart = Of([Does("y", 1, Week("y", IsoDayOfWeek.Tuesday), "g"), Does("z", 1, Week("z", IsoDayOfWeek.Monday), "g")]);

        Assert.Equal(new(ChangeKind.AnyWeekday, "y", null, 0), Relaxation.Smallest(apart, Zero, null));
    }
}
