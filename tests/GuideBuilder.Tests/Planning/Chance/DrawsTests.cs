using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Tests.Planning.Chance;

public sealed class DrawsTests
{
    private const int Trials = 20_000;

    [Fact]
    public void Streams_differ_by_seed_item_and_purpose_and_a_longer_one_begins_with_the_shorter()
    {
        uint[][] streams = [Draws.Of(1, "a", "days", 5), Draws.Of(2, "a", "days", 5), Draws.Of(1, "b", "days", 5), Draws.Of(1, "a", "event", 5)];

        Assert.Equal(4, streams.Select(s => string.Join(' ', s)).Distinct().Count());
        Assert.Equal(streams[0], Draws.Of(1, "a", "days", 50).Take(5));
    }

    [Fact]
    public void The_seed_of_a_stream_is_the_start_of_a_published_hash()
    {
        var hash = System.Security.Cryptography.SHA256.HashData("v1|7|dig|days"u8);

        Assert.Equal(Convert.ToHexString(hash[..8]), Draws.SeedOf(7, "dig", "days").ToString("X16", null));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(0.8)]
    [InlineData(1)]
    public void Two_items_of_a_group_have_the_rank_correlation_asked_for_and_keep_their_margins(double correlation)
    {
        var group = Draws.Of(1, "season", "days", Trials);
        var (a, b) = (Item("a"), Item("b"));
        uint[] Item(string id) => Draws.Shared(Draws.Of(1, id, "days", Trials), Draws.Of(1, id, "share", Trials), group, correlation);

        Assert.Equal(correlation, MathNet.Numerics.Statistics.Correlation.Spearman(a.Select(x => (double)x), b.Select(x => (double)x)), 0.03);
        Assert.All(Enumerable.Range(1, 9), tenth => Assert.Equal(tenth / 10.0, a.Count(x => Draws.Happens(x, tenth / 10.0)) / (double)Trials, 0.015));
    }

    [Fact]
    public void An_event_that_is_certain_always_happens_and_one_that_cannot_never_does()
    {
        Assert.True(Draws.Happens(uint.MaxValue, 1));
        Assert.False(Draws.Happens(0, 0));
    }
}
