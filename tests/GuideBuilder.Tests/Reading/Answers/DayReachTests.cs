using GuideBuilder.Model;
using NodaTime;

namespace GuideBuilder.Tests.Reading.Answers;

/// <summary>Days that cannot be what was meant. Today is 24 November 2026.</summary>
public sealed class DayReachTests
{
    private static readonly LocalDate Today = new(2026, 11, 24);

    [Theory]
    [InlineData("log: [{on: «2026-11-25», what: done, step: site-visit}]", "HB1110")]
    [InlineData("log: [{on: «2126-11-20», what: noted}]", "HB1110")]
    [InlineData("log: [{on: «1926-11-20», what: noted}]", "HB1111")]
    [InlineData("log: [{on: «2023-11-23», what: noted}]", "HB1111")]
    [InlineData("log: [{on: 2026-11-20, what: date-given, step: site-visit, date: «2029-11-25»}]", "HB1111")]
    [InlineData("log: [{on: 2026-11-20, what: quoted, party: network-operator, valid-until: «2127-02-18»}]", "HB1111")]
    [InlineData("dates: {needed-by: «2127-03-15»}", "HB1111")]
    [InlineData("dates: {needed-by: «1927-03-15»}", "HB1111")]
    public void A_day_that_a_plan_of_today_cannot_use_is_found_where_it_stands(string lines, string code)
    {
        var marked = Marked.Parse(SmallAnswers.Around(lines));
        marked.HasExactly(SmallAnswers.Read(marked.Text, today: Today).Faults, SmallAnswers.Path, code);
    }

    [Theory]
    [InlineData("log: [{on: 2026-11-24, what: done, step: site-visit}, {on: 2023-11-24, what: noted}]")]
    [InlineData("log: [{on: 2026-11-20, what: date-given, step: site-visit, date: 2029-11-24}]")]
    [InlineData("dates: {needed-by: 2026-11-01}")]
    [InlineData("papers: [{kind: certificate, dated: 1998-05-01}]")]
    public void What_lies_within_reach_is_none_the_worse(string lines) => Assert.Empty(SmallAnswers.Read(SmallAnswers.Around(lines), today: Today).Faults);

    [Theory]
    [InlineData("log: [site visit]")]
    [InlineData("log: [{on: , what: noted}]")]
    [InlineData("log: [{what: noted}]")]
    public void An_entry_without_a_day_is_a_fault_like_any_other(string lines) => Assert.NotEmpty(SmallAnswers.Read(SmallAnswers.Around(lines), today: Today).Faults);

    [Fact]
    public void On_no_day_in_particular_nothing_lies_ahead_or_too_far_off() =>
        Assert.Empty(SmallAnswers.Read(SmallAnswers.Around("dates: {needed-by: 2127-03-15}\nlog: [{on: 2126-11-20, what: noted}]")).Faults);

    [Theory]
    [InlineData("dates: {away: [«1900-01-01 to 2199-12-31»]}", "HB1112")]
    [InlineData("dates: {away: [2027-01-01 to 2027-12-31, «2028-01-01 to 2028-01-02», 2028-02-01]}", "HB1112")]
    [InlineData("dates: {away: [«2027-02-14 to 2027-02-10»]}", "HB1032")]
    public void More_days_than_a_year_has_and_a_span_that_runs_backwards_are_found(string lines, string code) => SmallAnswers.Finds(lines, code);

    [Theory]
    [InlineData("dates: {away: [2027-01-01 to 2027-12-31, 2028-01-01]}", 366)]
    [InlineData("dates: {away: none}", 0)]
    public void A_year_of_days_can_be_written(string lines, int days) =>
        Assert.Equal(days, Assert.IsType<Value.Days>(SmallAnswers.Given(lines)["dates.away"].Value).Spans.Sum(s => s.Length));
}
