using System.Globalization;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Situations;

public sealed class SituationTests
{
    private const int Told = 40;

    public static TheoryData<string> Ids => [.. Situation.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_handbook_says_what_it_should_have_said_beforehand(string id)
    {
        var situation = Situation.All.Single(s => s.Id == id);
        var home = situation.Home();

        Findings.AreNone(situation.Statements.SelectMany(s => home.Missing(s).Select(m => $"{id} ({s.Letter}) {s.Says}: {m}")));
    }

    [Fact]
    public void Every_second_number_up_to_79_is_there_with_its_letters_in_order()
    {
        Assert.Equal(Enumerable.Range(0, Told).Select(i => ((2 * i) + 1).ToString("'c'00", CultureInfo.InvariantCulture)), Situation.All.Select(s => s.Id));
        Assert.All(Situation.All, s => Assert.Equal(s.Statements.Select((_, i) => ((char)('a' + i)).ToString()), s.Statements.Select(x => x.Letter)));
    }

    [Fact]
    public void A_statement_is_covered_or_says_why_it_is_not() =>
        Assert.All(Situation.All.SelectMany(s => s.Statements), s => Assert.NotEqual(s.IsCovered, s.NotCovered is not null));

    [Fact]
    public void What_is_covered_is_counted()
    {
        var all = Situation.All.SelectMany(s => s.Statements.Select(x => (s.Id, Statement: x))).ToArray();
        var open = all.Where(s => s.Statement.NotCovered is not null).Select(s => $"{s.Id} ({s.Statement.Letter}) {s.Statement.Says} Not covered: {s.Statement.NotCovered}");

        Golden.Matches("Situations/covered.txt", string.Join('\n', open.Prepend($"{Situation.All.Count} situations, {all.Count(s => s.Statement.IsCovered)} of {all.Length} statements covered.")) + "\n");
    }
}
