using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Published;

/// <summary>Links that go round, links that allow less than others ask, and plans of next to nothing. Derived by hand.</summary>
public sealed class RingCases
{
    [Fact]
    public void Precedences_that_go_round_are_named_in_order()
    {
        var outcome = Sequencer.Solve(Of([Does("a", 1), Does("b", 1), Does("c", 1), Does("d", 1)], [After("b", "a"), After("c", "b"), After("a", "c"), After("d", "c")]), Zero, null);

        Assert.Equal(Verdict.Contradictory, outcome.Verdict);
        var links = outcome.Forward.Ring!.Links;
        Assert.Equal(["a", "b", "c"], links.Select(l => l.From).Order());
        Assert.All(links.Zip([.. links.Skip(1), links[0]]), pair => Assert.Equal(pair.First.To, pair.Second.From));
    }

    [Fact]
    public void An_activity_is_moved_later_so_that_its_follower_comes_soon_enough()
    {
        var forward = Sequencer.Forward(Of([Does("i", 3), Does("long", 10), Does("j", 1)], [After("j", "i"), After("j", "long")], new Maximal("i", "j", 2, Every)), Zero);

        Assert.Equal(Zero.PlusDays(10), forward["j"].Start);
        Assert.Equal(Zero.PlusDays(5), forward["i"].Start);
        Assert.Equal((DriverKind.Within, "j"), (forward["i"].Driver.Kind, forward["i"].Driver.From));
    }

    [Fact]
    public void A_wait_longer_than_the_most_allowed_is_a_ring_whatever_the_calendars()
    {
        var ring = Sequencer.Forward(
            Of([Does("i", 3), Does("m", 10, Week("w")), Does("j", 1)], [After("m", "i"), After("j", "m")], new Maximal("i", "j", 9, Week("w"))), Zero).Ring;

        Assert.Equal(["i", "j", "m"], ring!.Links.Select(l => l.From).Order());
        Assert.Equal([new("j", "i", true)], ring.Links.Where(l => l.IsWithin));
    }

    [Fact]
    public void A_wait_that_just_fits_is_no_ring() =>
        Assert.Null(Sequencer.Forward(Of([Does("i", 3), Does("m", 10, Week("w")), Does("j", 1)], [After("m", "i"), After("j", "m")], new Maximal("i", "j", 10, Week("w"))), Zero).Ring);

    [Fact]
    public void Nothing_to_do_is_done_at_the_start() => Assert.Equal(Zero, Sequencer.Solve(Of([]), Zero, null).Forward.Finish);

    [Fact]
    public void A_moment_alone_and_a_chain_of_moments_finish_on_the_day_they_start()
    {
        Assert.Equal(Zero, Sequencer.Forward(Of([Does("m", 0)]), Zero).Finish);
        var chain = Sequencer.Solve(Of([Does("a", 0), Does("b", 0), Does("c", 0)], [After("b", "a"), After("c", "b")]), Zero, null);

        Assert.Equal(Zero, chain.Forward.Finish);
        Assert.Equal(["a", "b", "c"], chain.DrivingChain.Select(t => t.Id));
        Assert.All(chain.Floats!.Activities, f => Assert.Equal((0, 0), (f.Total, f.Free)));
    }

    [Fact]
    public void A_chain_of_moments_may_start_on_a_day_on_which_nobody_works() =>
        Assert.Equal(new LocalDate(2026, 4, 7), Sequencer.Forward(Of([Does("m", 0, Week("w"))]), new(2026, 4, 3)).Finish);
}
