using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Ways;

public sealed class WayTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions = [.. Small.Empty.Questions, Small.YesNo("place.outside"), Small.Choice("wish.way", "inside", "outside", "stay")],
        Ways = [Small.Way("outside", Small.Is("place.outside", "yes")), Small.Way("inside", Small.Is("place.outside", "no")), Small.Way("stay")],
        Hazards = [Small.Hazard("always"), Small.Hazard("hole", Small.Is("way", "outside")), Small.Hazard("dust", Small.Is("way", "inside", "stay"))],
        Steps = [Small.Step("dig", 2, when: Small.Is("way", "outside")), Small.Step("fit", 1)],
    };

    [Theory]
    [InlineData("yes", null, "outside")]
    [InlineData("no", null, "inside")]
    [InlineData(null, null, "stay")]
    [InlineData("yes", "stay", "stay")]
    [InlineData("no", "outside", "inside")]
    [InlineData(null, "outside", "outside")]
    public void The_wished_way_is_chosen_unless_ruled_out_then_the_first_settled(string? outside, string? wished, string chosen) =>
        Assert.Equal(chosen, Plan(outside, wished).ChosenWay.Item.Id);

    [Fact]
    public void Without_a_settled_way_the_first_open_one_is_chosen() =>
        Assert.Equal("outside", Small.Plan(Guidance with { Ways = Guidance.Ways[..2] }).ChosenWay.Item.Id);

    [Theory]
    [InlineData("yes", null, "outside")]
    [InlineData(null, "no", "outside")]
    [InlineData(null, "yes", "stay")]
    [InlineData("no", "no", "stay")]
    public void A_way_that_does_not_meet_the_wish_is_compared_and_followed_only_where_nothing_else_is_left(string? outside, string? content, string chosen)
    {
        var guidance = Guidance with
        {
            Questions = [.. Guidance.Questions, Small.YesNo("wish.could-stay")],
            Ways = [Guidance.Ways[0], Small.Way("stay") with { MeetsWishIf = Small.Is("wish.could-stay", "yes") }],
        };
        var plan = Small.Plan(guidance, [.. new[] { ("place.outside", outside), ("wish.could-stay", content) }.Where(a => a.Item2 is not null).Select(a => (a.Item1, (object)a.Item2!))]);

        Assert.Equal(chosen, plan.ChosenWay.Item.Id);
        Assert.Contains(plan.Ways, w => w.Way is { IsPresent: true, Item.Id: "stay" } && w.Figures is not null);
        Assert.Equal(content is null, plan.OpenQuestions.Any(q => q.Question.Name == "wish.could-stay"));
    }

    [Fact]
    public void Every_way_that_is_not_ruled_out_has_its_figures() =>
        Assert.Equal(["outside: True", "inside: False", "stay: True"], Plan("yes", null).Ways.Select(w => $"{w.Way.Item.Id}: {w.Figures is not null}"));

    [Fact]
    public void The_hazard_register_holds_what_any_possible_way_brings_and_says_which()
    {
        var hazards = Plan("yes", null).Hazards.Select(h => $"{h.Hazard.Item.Id}, {h.Hazard.State}: {string.Join(' ', h.Ways)}");

        Assert.Equal(["always, Settled: outside stay", "hole, Settled: outside", "dust, Settled: stay"], hazards);
    }

    [Fact]
    public void The_steps_are_those_of_the_chosen_way()
    {
        Assert.Equal([ItemState.Settled, ItemState.Settled], Plan("yes", null).Steps.Select(s => s.Step.State));
        Assert.Equal([ItemState.RuledOut, ItemState.Settled], Plan("no", null).Steps.Select(s => s.Step.State));
    }

    [Fact]
    public void When_every_way_is_ruled_out_the_guidance_is_at_fault()
    {
        var guidance = Guidance with { Ways = Guidance.Ways[..1] };

        Assert.Equal("HB2004", Assert.Single(Small.Staged(guidance, Small.Answers(guidance, ("place.outside", "no"))).Faults).Code);
    }

    [Fact]
    public void A_way_may_not_be_judged_by_what_follows_from_it()
    {
        var guidance = Guidance with
        {
            Facts = [Small.Fact("a", null, (Small.Is("b", "yes"), "yes")), Small.Fact("b", null, (Small.Is("way", "stay"), "yes"))],
            Ways = [Small.Way("stay"), Small.Way("odd", Small.Is("a", "yes"))],
        };

        Assert.Equal("HB2003", Assert.Single(Small.Staged(guidance, Small.Answers(guidance)).Faults).Code);
    }

    private static Plan Plan(string? outside, string? wished) =>
        Small.Plan(Guidance, [.. new[] { ("place.outside", outside), ("wish.way", wished) }.Where(a => a.Item2 is not null).Select(a => (a.Item1, (object)a.Item2!))]);
}
