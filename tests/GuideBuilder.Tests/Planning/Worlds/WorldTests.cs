using GuideBuilder.Model;
using GuideBuilder.Planning.Worlds;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Worlds;

public sealed class WorldTests
{
    private static readonly Guidance Guidance = Small.Empty with
    {
        Questions =
        [
            .. Small.Empty.Questions,
            Small.Choice("a.cable", "lead", "plastic"),
            Small.YesNo("a.looped") with { AskIf = Small.Is("a.cable", "lead") },
            Small.Amount("a.length", "m", 8, 3),
            Small.Question("a.name", QuestionKind.Text),
            Small.Several("a.signs", "smoke", "wet"),
        ],
    };

    [Fact]
    public void The_assumed_world_takes_what_is_assumed_in_written_order()
    {
        var world = World.Assumed(Small.Answers(Guidance), Guidance.Questions);

        Assert.Equal(["a.cable", "a.looped", "a.length", "a.signs"], world.Taken.Select(t => t.Question.Name));
        Assert.Equal((new Value.Option("lead"), new Value.Option("yes")), (world.Answers["a.cable"].Value, world.Answers["a.looped"].Value));
        Assert.Equal(new Value.Amount(Quantity.Of(8, "m")), world.Answers["a.length"].Value);
        Assert.Empty(((Value.Several)world.Answers["a.signs"].Value!).Ids);
        Assert.Equal(Standing.NotAsked, world.Answers["a.name"].Standing);
    }

    [Fact]
    public void What_is_asked_is_asked_again_in_each_world()
    {
        var world = World.Of(Small.Answers(Guidance), Guidance.Questions, (_, c) => c[^1]);

        Assert.Equal(Standing.NotAsked, world.Answers["a.looped"].Standing);
        Assert.Equal(["a.cable", "a.length", "a.signs"], world.Taken.Select(t => t.Question.Name));
    }

    [Fact]
    public void A_known_answer_is_kept_in_every_world() =>
        Assert.Equal(new Value.Option("plastic"), World.Assumed(Small.Answers(Guidance, ("a.cable", "plastic")), Guidance.Questions).Answers["a.cable"].Value);

    [Fact]
    public void The_share_of_a_world_is_the_product_of_its_shares() =>
        Assert.Equal(1d / 2 / 2 / 2 / 3, World.Assumed(Small.Answers(Guidance), Guidance.Questions).Share, 12);

    [Fact]
    public void Weights_may_depend_on_earlier_answers_and_the_first_rule_that_holds_counts()
    {
        var question = Small.Choice("b.kind", "x", "y") with
        {
            WeightsIf = [Rule(Small.Is("a.cable", "plastic"), 1, 4), Rule(Small.Is("a.cable", "lead"), 3, 1), Rule(Condition.Always, 1, 0)],
        };
        var answers = Small.Answers(Guidance, ("a.cable", "lead"));

        Assert.Equal([0.75, 0.25], Candidates.Of(question, c => Judge.Of(c, name => answers[name]).Truth == Truth.Holds).Select(c => c.Share));
    }

    [Fact]
    public void What_cannot_be_in_this_home_is_not_assumed_and_the_likeliest_is()
    {
        var question = Small.Choice("b.kind", "x", "y") with { WeightsIf = [Rule(Condition.Always, 0, 4)] };

        Assert.Equal([(0d, false), (1d, true)], Candidates.Of(question, _ => true).Select(c => (c.Share, c.Assumed)));
    }

    [Fact]
    public void No_nation_and_no_kind_of_home_is_planned_by_an_answer_that_cannot_be_there()
    {
        string[] Options(string name) => [.. Content.Guidance.Questions.Single(q => q.Name == name).Options.Select(o => o.Id)];
        var wrong =
            from nation in Options("home.nation")
            from kind in Options("home.kind")
            let answers = AnswersFiles.Read(AnswersFiles.Of($"handbook: {{format: 1}}\nhome: {{nation: {nation}, kind: {kind}}}\nwish: {{moves: [cutout, meter]}}\n"))
            where World.Assumed(answers, Content.Guidance.Questions).Share <= 0
            select $"{nation}, {kind}";

        Findings.AreNone(wrong);
    }

    private static WeightRule Rule(Condition when, decimal x, decimal y) =>
        new(when, System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary(new Dictionary<string, decimal> { ["x"] = x, ["y"] = y }), Place.None);
}
