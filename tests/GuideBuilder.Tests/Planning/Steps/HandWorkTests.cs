using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Steps;

/// <summary>Steps whose days follow from hours of work.</summary>
public sealed class HandWorkTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.Amount("a.least", "hours", 5), Small.Amount("a.likely", "hours", 14, 30), Small.Amount("a.most", "hours", 31)],
        Steps = [Small.Step("dig", 1, "household") with { Work = new("a.least", "a.likely", "a.most", 6) }, Small.Turn("joint", "operator", 1) with { After = [Small.After("dig")] }],
    };

    [Fact]
    public void Its_days_are_those_that_the_hours_fill_and_its_hours_are_the_households_own()
    {
        var plan = Small.Plan(Guidance, ("a.least", Quantity.Of(5, "hours")), ("a.likely", Quantity.Of(14, "hours")), ("a.most", Quantity.Of(31, "hours")));
        var step = plan.Steps[0].Step.Item;

        Assert.Equal((ThreePoint.Of(1, 3, 6), ThreePoint.Of(5, 14, 31)), (step.Takes.Amount, step.Hours));
        Assert.Equal((new(2027, 2, 3), new(2027, 2, 4)), (plan.Steps[0].Dates!.EarliestFinish, plan.Steps[1].Dates!.EarliestStart));
    }

    [Fact]
    public void An_answer_that_changes_the_hours_alone_changes_the_finish_and_is_worth_finding_out()
    {
        var plan = Small.Plan(Guidance, ("a.least", Quantity.Of(5, "hours")), ("a.most", Quantity.Of(31, "hours")));
        var (entry, middle) = (plan.FindOutFirst.Single(), plan.Schedule.HouseholdHours.Likely);

        Assert.Equal("a.likely", entry.Question.Name);
        Assert.Equal(2, entry.Rows.Length);
        Assert.True(entry.Rows[0].Finish!.P50 < entry.Rows[1].Finish!.P50, "more hours end no later");
        Assert.All(entry.Rows, r => Assert.Empty(r.Changes));
        Assert.InRange(middle, 14, 30);
    }

    [Fact]
    public void Where_no_world_gives_the_hours_the_stated_days_count()
    {
        var guidance = Guidance with { Questions = [.. Guidance.Questions.Select(q => q.Name == "a.most" ? q with { AskIf = Small.Is("home.nation", "elsewhere") } : q)] };

        Assert.Equal(ThreePoint.Certain(1), Small.Plan(guidance, ("a.least", Quantity.Of(5, "hours"))).Steps[0].Step.Item.Takes.Amount);
    }

    [Theory]
    [InlineData("3 m", 1)]
    [InlineData("20 m", 3)]
    public void A_longer_trench_takes_more_days_and_no_two_digs_share_one(string length, int atLeast)
    {
        var plan = Home.Given($"home: {{nation: england, kind: semi}}\nwish: {{moves: [cutout, meter]}}\nplace: {{kind: outside-box}}\nintake: {{service: underground, signs: none}}\nground: {{who-digs: household, length: {length}, joint-place: own-land, surface: grass, soil: clay}}\n").Plan;
        var (trench, hole) = (plan.Steps.Single(s => s.Step.Item.Id == "dig-trench"), plan.Steps.Single(s => s.Step.Item.Id == "dig-joint-hole"));

        Assert.True(trench.Step.Item.Takes.Amount.Likely >= atLeast, $"{trench.Step.Item.Takes.Amount}");
        Assert.True(hole.Step.Item.Takes.Amount.Likely * 6 >= hole.Step.Item.Hours!.Likely);
        Assert.True(hole.Dates!.EarliestStart > trench.Dates!.EarliestFinish, $"trench to {trench.Dates.EarliestFinish}, hole from {hole.Dates.EarliestStart}");
    }
}
