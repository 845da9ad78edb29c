using GuideBuilder.Model;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Siting;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Siting;

public sealed class SitingTests
{
    private static readonly (string, object)[] Good =
    [
        ("place.kind", "outside-box"), ("place.wall", "solid-brick"), ("place.near", Array.Empty<string>()), ("place.gas-distance", Metres(1)), ("place.height", Metres(1.2m)), ("place.room-use", "hall"),
        ("place.flood", "no"), ("place.only-stair", "no"), ("place.box-metal", "no"), ("place.clear-space", Metres(1.2m)), ("place.wall-stays", "yes"), ("place.party-wall", "no"),
        ("place.hub-distance", Metres(5)), ("home.heritage", "none"), ("home.supply-number", new Value.NumberName("2012345678385")), ("works.enclosing", "no"),
    ];

    private static Quantity Metres(decimal amount) => Quantity.Of(amount, "m");

    private static Lookup With(params (string Name, object? Value)[] changed)
    {
        var last = Good.Select(g => (Name: g.Item1, Value: (object?)g.Item2)).Concat(changed).GroupBy(g => g.Name).Select(g => g.Last());
        var answers = Small.Answers(Content.Guidance, [.. last.Where(g => g.Value is not null).Select(g => (g.Name, g.Value!))]);
        return name => answers[name];
    }

    private static SitingOutcome Verdict(string rule, params (string Name, object? Value)[] changed) =>
        Assert.Single(SitingRules.Of(With(changed), Content.Guidance.Tables), v => v.Rule.Id == "siting-" + rule).Outcome;

    private static string? Overall(params (string Name, object? Value)[] changed) =>
        (Calculators.ByName["place.siting"].Of(With(changed), Content.Guidance.Tables).Value as Value.Option)?.Id;

    [Fact]
    public void A_place_without_trouble_meets_every_rule()
    {
        Assert.All(SitingRules.Of(With(), Content.Guidance.Tables), v => Assert.True(v.Outcome == SitingOutcome.Meets, v.Rule.Id));
        Assert.Equal("meets", Overall());
    }

    [Theory]
    [InlineData(0.1, SitingOutcome.Conflicts)]
    [InlineData(0.15, SitingOutcome.Ask)]
    [InlineData(0.3, SitingOutcome.Meets)]
    public void The_gas_meter_keeps_its_distance(double metres, SitingOutcome outcome) => Assert.Equal(outcome, Verdict("gas", ("place.gas-distance", Metres((decimal)metres))));

    [Fact]
    public void What_nobody_has_said_is_not_known_and_leaves_the_whole_open()
    {
        Assert.Equal(SitingOutcome.NotKnown, Verdict("flood", ("place.flood", null)));
        Assert.Null(Overall(("place.flood", null)));
    }

    [Fact]
    public void A_conflict_settles_it_whatever_else_is_unknown() => Assert.Equal("conflicts", Overall(("place.flood", null), ("place.kind", "same-wall"), ("place.room-use", "bathroom")));

    [Fact]
    public void Something_to_ask_makes_the_whole_ask() => Assert.Equal("ask", Overall(("place.party-wall", "yes")));

    [Fact]
    public void An_operators_own_rule_holds_in_its_own_area_alone()
    {
        Assert.Equal(SitingOutcome.Conflicts, Verdict("room-southern", ("place.kind", "inside-elsewhere"), ("place.room-use", "bedroom")));
        Assert.DoesNotContain(SitingRules.Of(With(("place.kind", "inside-elsewhere"), ("home.supply-number", new Value.NumberName("1312345678907"))), Content.Guidance.Tables), v => v.Rule.Id == "siting-room-southern");
    }

    [Theory]
    [InlineData("inside-elsewhere", SitingOutcome.Conflicts)]
    [InlineData("same-wall", SitingOutcome.Conflicts)]
    public void A_bathroom_is_against_the_rule_indoors(string kind, SitingOutcome outcome) => Assert.Equal(outcome, Verdict("room", ("place.kind", kind), ("place.room-use", "bathroom")));

    [Theory]
    [InlineData("outside-box")]
    [InlineData("kiosk")]
    public void The_room_behind_a_place_outdoors_is_no_rule(string kind) =>
        Assert.DoesNotContain(SitingRules.Of(With(("place.kind", kind), ("place.room-use", null)), Content.Guidance.Tables), v => v.Asks == "place.room-use");

    [Fact]
    public void While_nobody_knows_whether_it_is_indoors_the_room_is_not_known() =>
        Assert.Equal(SitingOutcome.NotKnown, Verdict("room", ("place.kind", null), ("place.room-use", "bathroom")));

    [Fact]
    public void Where_nobody_knows_the_operator_its_refusal_is_something_to_ask() =>
        Assert.Equal(SitingOutcome.Ask, Verdict("room-southern", ("place.kind", "inside-elsewhere"), ("place.room-use", "bedroom"), ("home.supply-number", null)));

    [Fact]
    public void Where_nobody_knows_the_operator_no_rule_of_one_is_met()
    {
        var own = SitingRules.Of(With(("home.supply-number", null)), Content.Guidance.Tables).Where(v => v.Rule.Cells.ContainsKey("areas")).ToArray();

        Assert.NotEmpty(own);
        Assert.All(own, v => Assert.Equal((SitingOutcome.Ask, false), (v.Outcome, v.OperatorKnown)));
    }

    [Fact]
    public void The_rules_ask_only_what_the_calculator_may_use() =>
        Assert.Empty(SitingRules.Names(Content.Guidance.Tables).Except([.. Calculators.ByName["place.siting"].Needs, .. Calculators.ByName["place.siting"].MayUse]));

    [Fact]
    public void Every_name_and_option_in_the_rules_is_one_of_the_questions() => Findings.AreNone(
        from row in Content.Guidance.Tables.Rows
        where row.Id.StartsWith("siting-", StringComparison.Ordinal)
        let question = Content.Guidance.Questions.FirstOrDefault(q => q.Name == row.Cells["asks"].Words)
        from option in new[] { "conflicts-if", "ask-if" }.SelectMany(c => row.Cells.GetValueOrDefault(c)?.Words.Split(' ') ?? [])
        where question is null || (question.Kind == QuestionKind.YesNo ? option is not ("yes" or "no") : question.Options.All(o => o.Id != option))
        select $"{row.Id}: {option}");
}
