using GuideBuilder.Planning.Sequence;
using NodaTime;
using static GuideBuilder.Tests.Planning.Sequence.Build;

namespace GuideBuilder.Tests.Published;

/// <summary>Textbook networks in plain days, each a line an activity: id, days, earliest start and finish, latest start and finish, slack, free float where known; then what it follows.</summary>
public sealed class CriticalPathExamples
{
    // "Example 1: Draw the network for the events in Table 1", seven activities, order parts left out. All but the free floats read; those of C and F derived.
    private const string SevenActivities = """
        A 6   0  6  0  6 0 0
        B 2   6  8  6  8 0 0  A
        C 2   6  8  7  9 1 0  A
        D 3   8 11  8 11 0 0  B
        F 2   8 10  9 11 1 1  C
        E 4  11 15 11 15 0 0  D F
        G 1  15 16 15 16 0 0  E
        """;

    // "Precedence Relations and Durations for a Nine Activity Project Example". Inputs and event times read, floats derived.
    private const string NineActivities = """
        A 4   0  4  0  4  0  0
        B 3   0  3  9 12  9  9
        C 8   4 12  4 12  0  0  A
        D 7   4 11 15 22 11 10  A
        E 9  12 21 13 22  1  0  B C
        F 12 12 24 12 24  0  0  B C
        G 2  21 23 22 24  1  1  D E
        H 5  21 26 25 30  4  4  D E
        I 6  24 30 24 30  0  0  F G
        """;

    // Taylor, Introduction to Management Science, problem solutions of the chapter on project management: an arrow network of seven arcs. Read.
    private const string SevenArcs = """
        1-2 7   0  7  2  9 2 -
        1-3 10  0 10  0 10 0 -
        2-4 6   7 13  9 15 2 -  1-2
        3-4 5  10 15 10 15 0 -  1-3
        3-5 4  10 14 14 18 4 -  1-3
        4-5 3  15 18 15 18 0 -  2-4 3-4
        5-6 2  18 20 18 20 0 -  3-5 4-5
        """;

    // The same chapter: an arrow network with a dummy that takes no time. Read.
    private const string ArcsWithDummy = """
        1-2 8   0  8  1  9  1 -
        1-3 10  0 10  0 10  0 -
        1-4 9   0  9  6 15  6 -
        2-5 6   8 14  9 15  1 -  1-2
        2-6 4   8 12 16 20  8 -  1-2
        3-5 5  10 15 10 15  0 -  1-3
        4-5 0   9  9 15 15  6 -  1-4
        4-7 7   9 16 20 27 11 -  1-4
        5-7 12 15 27 15 27  0 -  2-5 3-5 4-5
        5-8 15 15 30 16 31  1 -  2-5 3-5 4-5
        6-9 18 12 30 20 38  8 -  2-6
        7-8 4  27 31 27 31  0 -  4-7 5-7
        8-9 7  31 38 31 38  0 -  5-8 7-8
        """;

    // A course module on precedence diagrams: fourteen activities. Inputs and the five path sums read, the rest derived.
    private const string FourteenActivities = """
        A 2   0  2  0  2  0 0
        B 10  2 12  2 12  0 0  A
        C 13  2 15 13 26 11 9  A
        D 12  2 14  4 16  2 0  A
        E 12 12 24 18 30  6 6  B
        F 7  12 19 12 19  0 0  B
        G 10 14 24 16 26  2 0  D
        H 16 14 30 17 33  3 0  D
        I 6  19 25 19 25  0 0  F
        J 12 24 36 26 38  2 2  C G
        K 5  25 30 25 30  0 0  I
        L 8  30 38 30 38  0 0  E K
        M 5  30 35 33 38  3 3  H
        N 3  38 41 38 41  0 0  J L M
        """;

    // The same fourteen with some links from start to start (marked +). Inputs read, numbers derived.
    private const string StartToStart = """
        A 2   0  2  0  2 0 -
        B 10  0 10  4 14 4 -  +A
        C 13  2 15 10 23 8 -  A
        D 12  2 14  2 14 0 -  A
        E 12 10 22 15 27 5 -  B
        F 7  10 17 14 21 4 -  B
        G 10 14 24 23 33 9 -  D
        H 16 14 30 14 30 0 -  D
        I 6  17 23 21 27 4 -  F
        J 12 15 27 23 35 8 -  C +G
        K 5  17 22 22 27 5 -  +I
        L 8  23 31 27 35 4 -  E I K
        M 5  30 35 30 35 0 -  H
        N 3  35 38 35 38 0 -  G J L M
        """;

    [Theory]
    [InlineData(SevenActivities, 16, "A B D E G")]
    [InlineData(NineActivities, 30, "A C F I")]
    [InlineData(SevenArcs, 20, "1-3 3-4 4-5 5-6")]
    [InlineData(ArcsWithDummy, 38, "1-3 3-5 5-7 7-8 8-9")]
    [InlineData(FourteenActivities, 41, "A B F I K L N")]
    [InlineData(StartToStart, 38, "A D H M N")]
    public void Every_published_date_and_float_comes_out(string table, int duration, string critical)
    {
        var rows = table.Split('\n').Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToArray();
        var outcome = Sequencer.Solve(
            Of(rows.Select(r => Does(r[0], int.Parse(r[1], null))), rows.SelectMany(r => r.Skip(8).Select(p => p[0] == '+' ? With(r[0], p[1..]) : After(r[0], p)))), Zero, null);

        Assert.Equal(rows.Select(r => string.Join(' ', r.Skip(2).Take(6))), rows.Select(r => Line(outcome, r[0], r[7] == "-")));
        Assert.Equal(duration, Boundary(outcome.Forward.Finish!.Value) + 1);
        Assert.Equal(critical.Split(' '), outcome.DrivingChain.Select(t => t.Id));
        Assert.Equal(critical.Split(' ').Order(), outcome.Floats!.Activities.Where(f => f.Total == 0).Select(f => f.Id).Order());
    }

    [Fact]
    public void The_five_published_paths_have_their_published_lengths()
    {
        string[] paths = ["ABEJN".Replace('J', 'L'), "ABFIKLN", "ACJN", "ADGJN", "ADHMN"];
        var days = FourteenActivities.Split('\n').Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToDictionary(r => r[0][0], r => int.Parse(r[1], null));

        Assert.Equal([35, 41, 30, 39, 38], paths.Select(p => Length(p, days)));
    }

    private static int Length(string path, Dictionary<char, int> days)
    {
        var ids = path.Select(c => c.ToString()).ToArray();
        var chain = Of(path.Select(c => Does(c.ToString(), days[c])), ids.Zip(ids.Skip(1), (a, b) => After(b, a)));
        return Boundary(Sequencer.Forward(chain, Zero).Finish!.Value) + 1;
    }

    /// <summary>Dates as the tables give them: days gone by at the start, and at the end of the last day.</summary>
    private static string Line(Outcome outcome, string id, bool withoutFree)
    {
        var (early, late) = (outcome.Forward[id], outcome.Latest![id]);
        var slack = outcome.Floats!.Activities.Single(f => f.Id == id);
        var moment = outcome.Forward.Compiled.Days[outcome.Forward.Compiled.IndexOf(id)] == 0 ? 0 : 1;
        return string.Join(' ', Boundary(early.Start), Boundary(early.Finish) + moment, Boundary(late.Start), Boundary(late.Finish) + moment, slack.Total, withoutFree ? "-" : slack.Free);
    }

    private static int Boundary(LocalDate day) => Period.DaysBetween(Zero, day);
}
