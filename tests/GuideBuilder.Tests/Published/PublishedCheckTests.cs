using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

public sealed class PublishedCheckTests
{
    [Fact]
    public void Every_electrical_case_is_checked_once() =>
        Assert.Equal(Enumerable.Range(1, 75), PublishedCheck.All.Where(c => c.Says.Subject == ElectricalCase.Subject).Select(c => c.Says.Number));

    [Fact]
    public void The_electrical_cases_are_listed_by_source() => Golden.Matches("Published/electrical.txt", PublishedCheck.Table(ElectricalCase.Subject));

    [Fact]
    public void The_sources_are_counted()
    {
        var counts = PublishedCheck.Counts();

        Golden.Matches("Published/by-source.txt", counts);
        Assert.Contains(counts, File.ReadAllText(Repository.At("DEVELOPERS.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_check_says_where_its_value_stands() =>
        Findings.AreNone(from check in PublishedCheck.All where string.IsNullOrWhiteSpace(check.Says.Source) select check.Test);
}
