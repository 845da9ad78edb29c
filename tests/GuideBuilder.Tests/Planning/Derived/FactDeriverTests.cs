using GuideBuilder.Model;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Derived;

public sealed class FactDeriverTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("home.old"), Small.YesNo("home.wet")],
        Facts =
        [
            Small.Fact("careful", "no", (Small.Is("frail", "yes"), "yes")),
            Small.Fact("frail", "no", (Small.All(Small.Is("home.old", "yes"), Small.Is("home.wet", "yes")), "yes")),
        ],
    };

    [Theory]
    [InlineData("yes", "yes", Standing.Known, "yes")]
    [InlineData("no", null, Standing.Known, "no")]
    [InlineData("yes", null, Standing.Unknown, null)]
    [InlineData(null, null, Standing.Unknown, null)]
    public void A_fact_is_the_row_that_holds_or_unknown_or_what_is_left(string? old, string? wet, Standing standing, string? value)
    {
        var fact = Facts(old, wet)["careful"];

        Assert.Equal((standing, value), (fact.Standing, (fact.Value as Value.Option)?.Id));
    }

    [Fact]
    public void The_reason_of_a_fact_leads_down_to_the_unanswered_question()
    {
        var fact = (Given.Derived)Facts("yes", null)["careful"];

        Assert.Equal(("fact", "careful", Truth.Open), (fact.Because.RuleKind, fact.Because.RuleId, fact.Because.Truth));
        Assert.Equal(["home.wet"], fact.Because.Unsettled.Select(q => q.Name));
    }

    [Fact]
    public void The_written_order_of_facts_changes_nothing()
    {
        var turned = Guidance with { Facts = [.. Guidance.Facts.Reverse()] };

        Assert.Equal(Facts("yes", "yes")["careful"].Value, Small.Facts(turned, ("home.old", "yes"), ("home.wet", "yes"))["careful"].Value);
    }

    [Fact]
    public void A_fact_that_does_not_apply_is_not_asked_for()
    {
        var rule = Small.Fact("frail", "no");
        var guidance = Guidance with { Facts = [rule with { Head = rule.Head with { AppliesIf = Small.Is("home.old", "yes") } }] };

        Assert.Equal(Standing.NotAsked, Small.Facts(guidance, ("home.old", "no"))["frail"].Standing);
        Assert.Equal(Standing.Unknown, Small.Facts(guidance)["frail"].Standing);
    }

    [Fact]
    public void A_circle_of_facts_is_a_fault_that_names_it()
    {
        var guidance = Guidance with { Facts = [Small.Fact("b", null, (Small.Is("a", "yes"), "yes")), Small.Fact("a", null, (Small.Is("b", "yes"), "yes"))] };

        var staged = FactDeriver.Derive(Small.Answers(guidance), guidance);

        var fault = Assert.Single(staged.Faults);
        Assert.Equal(("HB2001", "These facts rest on each other: a, b, a."), (fault.Code, fault.Wrong));
        Assert.Null(staged.Value);
    }

    [Fact]
    public void Two_rows_that_hold_at_once_are_a_fault()
    {
        var guidance = Guidance with { Facts = [Small.Fact("a", null, (Small.Is("home.old", "yes"), "x"), (Small.Is("home.wet", "yes"), "y"))] };

        Assert.Equal("HB2002", Assert.Single(FactDeriver.Derive(Small.Answers(guidance, ("home.old", "yes"), ("home.wet", "yes")), guidance).Faults).Code);
        Assert.Empty(FactDeriver.Derive(Small.Answers(guidance, ("home.old", "yes")), guidance).Faults);
    }

    [Fact]
    public void Before_a_way_is_taken_it_is_unknown() => Assert.Equal(Standing.Unknown, Facts(null, null)[CalculatedFact.Way].Standing);

    [Fact]
    public void A_fact_may_ask_the_way()
    {
        var guidance = Guidance with { Facts = [Small.Fact("stays", "no", (Small.Is("way", "stay"), "yes"))] };

        Assert.Equal(Standing.Unknown, Small.Facts(guidance)["stays"].Standing);
        Assert.Equal(new Value.Option("yes"), FactDeriver.Under(Small.Answers(guidance), guidance, guidance.Ways[0]).Facts["stays"].Value);
    }

    private static Facts Facts(string? old, string? wet) =>
        Small.Facts(Guidance, [.. new[] { ("home.old", old), ("home.wet", wet) }.Where(a => a.Item2 is not null).Select(a => (a.Item1, (object)a.Item2!))]);
}
