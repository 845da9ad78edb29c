using GuideBuilder.Tests.Situations;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

public sealed class CaseTests
{
    private const int HazardCases = 46;

    public static TheoryData<string, string> All =>
    [
        .. new[] { "hazards.yaml", "parties.yaml" }.SelectMany(f => Case.In(f).Select(c => new TheoryDataRow<string, string>(f, c.Statement.Letter))),
    ];

    [Theory]
    [MemberData(nameof(All))]
    public void The_facts_bring_what_they_must_and_nothing_that_they_must_not(string file, string name)
    {
        var found = Case.In(file).Single(c => c.Statement.Letter == name);

        Findings.AreNone(found.Home().Missing(found.Statement).Select(m => $"{name} {found.Statement.Says} {m}"));
    }

    [Fact]
    public void Every_case_of_the_hazard_register_is_there_once() =>
        Assert.Equal(Enumerable.Range(1, HazardCases).Select(i => FormattableString.Invariant($"CC{i:00}")), Case.In("hazards.yaml").Select(c => c.Statement.Letter));

    [Fact]
    public void Every_number_of_the_register_stands_for_a_hazard_of_the_guidance() =>
        Assert.Empty(Case.Numbered.Except(Content.Guidance.Hazards.Select(h => h.Id)));
}
