using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Published;

public sealed class GroundCheckTests
{
    /// <summary>The list of cases has no number 28.</summary>
    [Fact]
    public void Every_ground_case_is_checked_once() => Assert.Equal(Enumerable.Range(1, 60).Where(n => n != 28), Numbers("ground"));

    [Fact]
    public void Every_case_on_supply_numbers_is_checked_once() => Assert.Equal(Enumerable.Range(1, 13), Numbers("supply-numbers"));

    /// <summary>The first thirteen are those on supply numbers.</summary>
    [Fact]
    public void Every_case_on_regulation_is_checked_once() => Assert.Equal(Enumerable.Range(14, 21), Numbers("regulation"));

    [Theory]
    [InlineData("regulation")]
    [InlineData("ground")]
    [InlineData("supply-numbers")]
    public void The_cases_are_listed_by_source(string subject) => Golden.Matches($"Published/{subject}.txt", PublishedCheck.Table(subject));

    private static IEnumerable<int> Numbers(string subject) => PublishedCheck.All.Where(c => c.Says.Subject == subject).Select(c => c.Says.Number);
}
