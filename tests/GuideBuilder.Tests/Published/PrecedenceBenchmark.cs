using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Published;

/// <summary>The first 30-job instance of Kolisch and Sprecher's project scheduling library (1996): durations and followers. Read; without its resources.</summary>
public sealed class PrecedenceBenchmark
{
    private const string Durations = "0 8 4 6 3 8 5 9 2 7 9 2 6 3 9 10 6 5 3 7 2 7 2 3 3 7 8 3 7 2 2 0";

    private const string Followers = """
        1:2,3,4 2:6,11,15 3:7,8,13 4:5,9,10 5:20 6:30 7:27 8:12,19,27 9:14 10:16,25 11:20,26 12:14 13:17,18 14:17 15:25 16:21,22 17:22 18:20,22
        19:24,29 20:23,25 21:28 22:23 23:24 24:30 25:30 26:31 27:28 28:31 29:32 30:32 31:32
        """;

    [Fact]
    public void Its_length_without_resources_is_the_one_printed_in_its_header()
    {
        var days = Durations.Split(' ').Select((d, i) => Does($"{i + 1}", int.Parse(d, null)));
        var links = Followers.Split([' ', '\n']).Select(f => f.Split(':')).SelectMany(f => f[1].Split(',').Select(to => After(to, f[0])));

        Assert.Equal(38, Period.DaysBetween(Zero, Sequencer.Forward(Of(days, links), Zero)["32"].Start));
    }
}
