using GuideBuilder.Planning.Sequence;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Published;

/// <summary>
/// Textbook examples of three-point estimates on networks: expected time (a + 4 m + b) / 6, variance ((b − a) / 6)², path sums, and the normal law.
/// The network is run in twelfths of a unit, in which every expected time is whole, so that the sequencer itself finds the longest path.
/// </summary>
public sealed class ThreePointExamples
{
    private const int Fine = 12;

    // A problem with three paths. Inputs, expected times and path figures read; the probability derived.
    private const string ThreePaths = "A 5 6 7; B 8 8 11; C 6 8 11 A; D 9 12 15; E 5 6 9 C; F 5 6 7 D; G 2 3 7 F; H 4 4 5 B; I 5 7 8 H";

    // Fourteen activities. Expected times, and the deviations of D and E, read; the rest derived.
    private const string Fourteen =
        "A 5 5 7; B 1 2 5; C 5 5 5 A; D 4 8 13 A; E 1 10 17 B C; F 1 5 7 D; G 2 6 9 D; H 4 4 6 E F; I 2 7 10 G H; J 2 4 7 I; K 6 10 13 I; L 2 6 6 J; M 2 2 3 K; N 7 7 12 L M";

    // Vanhoucke, Project Management knowledge centre, on variable activity times. Inputs read, answers derived.
    private const string SixActivities = "A 2 5 8; B 1 2 9 A; C 0.25 0.5 3.75 A; D 1 1 7 B; E 1 2 9 B C; F 1 3 11 D E";

    // The paper mill of Heizer and Render, Operations Management (memory): 15 weeks, variance 3.11. Only its critical activities.
    private const string PaperMill = "A 1 2 3; C 1 2 3 A; E 1 4 7 C; G 3 4 11 E; H 1 2 3 G";

    [Theory]
    [InlineData(ThreePaths, "D F G", 21.5, 1.8056)]
    [InlineData(Fourteen, "A C E H I K M N", 50.8333, 11.1944)]
    [InlineData(SixActivities, "A B E F", 15, 7.3333)]
    [InlineData(PaperMill, "A C E G H", 15, 3.1111)]
    public void The_longest_path_has_the_published_time_and_variance(string text, string critical, double time, double variance)
    {
        var rows = Read(text);
        var net = Of(rows.Select(r => Does(r.Id, (int)Math.Round(r.Time * Fine))), rows.SelectMany(r => r.After.Select(p => After(r.Id, p))));
        var chain = Sequencer.DrivingChain(Sequencer.Forward(net, Zero)).Select(t => t.Id).ToArray();
        var path = rows.Where(r => chain.Contains(r.Id)).ToArray();

        Assert.Equal(critical.Split(' '), chain);
        Assert.Equal(time, path.Sum(r => r.Time), 4);
        Assert.Equal(variance, path.Sum(r => r.Variance), 4);
    }

    [Theory]
    [InlineData("A C E", 20.5, 1.25)]
    [InlineData("B H I", 19.5, 0.5278)]
    public void The_other_two_paths_of_the_first_example_have_their_published_figures(string path, double time, double variance)
    {
        var rows = Read(ThreePaths).Where(r => path.Contains(r.Id, StringComparison.Ordinal)).ToArray();

        Assert.Equal((time, variance), (Math.Round(rows.Sum(r => r.Time), 4), Math.Round(rows.Sum(r => r.Variance), 4)));
    }

    /// <summary>Mean, variance, limit, and the chance of no more than the limit: the first example and the product of its three paths (derived), a path of 28 weeks (read: 92.13 %), three activities in a row (read), 214 days (read, the chance of more), the second example (derived), the paper mill (memory; 0.7157 with rounded tables).</summary>
    [Theory]
    [InlineData(21.5, 1.80556, 24, 0.9686, 0.0001)]
    [InlineData(28, 2, 30, 0.92135, 0.0001)]
    [InlineData(17, 9, 20, 0.8413, 0.0001)]
    [InlineData(214, 100, 224, 1 - 0.1587, 0.0001)]
    [InlineData(50.83333, 11.19444, 53, 0.7414, 0.0001)]
    [InlineData(50.83333, 11.19444, 55, 0.8935, 0.0001)]
    [InlineData(15, 3.11111, 16, 0.7146, 0.0001)]
    [InlineData(15, 3.11111, 16, 0.7157, 0.002)]
    public void The_normal_law_gives_the_published_chances(double mean, double variance, double limit, double chance, double within) =>
        Assert.Equal(chance, Normal(mean, variance, limit), within);

    [Fact]
    public void The_chances_of_three_paths_multiply() =>
        Assert.Equal(0.9677, Normal(21.5, 1.80556, 24) * Normal(20.5, 1.25, 24) * Normal(19.5, 0.52778, 24), 4);

    private static double Normal(double mean, double variance, double limit) => MathNet.Numerics.Distributions.Normal.CDF(mean, Math.Sqrt(variance), limit);

    private static (string Id, double Time, double Variance, string[] After)[] Read(string text) =>
    [
        .. from row in text.Split("; ")
           let parts = row.Split(' ')
           let points = parts[1..4].Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture)).ToArray()
           select (parts[0], (points[0] + (4 * points[1]) + points[2]) / 6, Math.Pow((points[2] - points[0]) / 6, 2), parts[4..]),
    ];
}
