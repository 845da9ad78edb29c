using System.Collections.Immutable;
using GuideBuilder.Model;

namespace GuideBuilder.Tests.Model.Conditions;

/// <summary>Conditions over names that say what they are: h holds, f fails, o is open; a trailing digit tells them apart.</summary>
public sealed class JudgeTests
{
    [Theory]
    [InlineData("all", "", Truth.Holds, "")]
    [InlineData("any", "", Truth.Fails, "")]
    [InlineData("none", "", Truth.Holds, "")]
    [InlineData("all", "h1 h2", Truth.Holds, "h1 h2")]
    [InlineData("all", "h1 f1 o1 f2", Truth.Fails, "f1 f2")]
    [InlineData("all", "h1 o1 h2 o2", Truth.Open, "o1 o2")]
    [InlineData("any", "f1 f2", Truth.Fails, "f1 f2")]
    [InlineData("any", "f1 h1 o1 h2", Truth.Holds, "h1 h2")]
    [InlineData("any", "f1 o1 f2 o2", Truth.Open, "o1 o2")]
    [InlineData("none", "f1 f2", Truth.Holds, "f1 f2")]
    [InlineData("none", "f1 h1 o1 h2", Truth.Fails, "h1 h2")]
    [InlineData("none", "f1 o1 f2 o2", Truth.Open, "o1 o2")]
    public void The_leaves_that_decide_are_those_that_made_it_so(string kind, string names, Truth truth, string deciding)
    {
        var parts = names.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Asks).ToImmutableArray();
        var judgement = Judge.Of(Join(kind, parts), Look);

        Assert.Equal(truth, judgement.Truth);
        Assert.Equal(deciding.Split(' ', StringSplitOptions.RemoveEmptyEntries), judgement.Deciding.Select(l => l.Given.Name));
    }

    [Fact]
    public void Leaves_are_followed_down_only_where_they_decide()
    {
        var condition = Join("all", [Join("any", [Asks("f1"), Asks("h1")]), Join("none", [Asks("f2"), Join("all", [Asks("h2"), Asks("o1")])])]);
        var judgement = Judge.Of(condition, Look);

        Assert.Equal((Truth.Open, "o1"), (judgement.Truth, Assert.Single(judgement.Deciding).Given.Name));
        Assert.Equal(Truth.Open, judgement.Deciding[0].Truth);
    }

    [Fact]
    public void A_comparison_with_an_unknown_answer_is_open_and_with_one_not_asked_it_fails()
    {
        Assert.Equal(Truth.Open, Judge.Of(Asks("o"), Look).Truth);
        Assert.Equal(Truth.Fails, Judge.Of(Asks("n"), Look).Truth);
        Assert.Equal(Truth.Holds, Judge.Of(Join("none", [Asks("n")]), Look).Truth);
    }

    [Fact]
    public void An_unknown_answer_that_is_learnt_never_turns_a_settled_condition_round()
    {
        string[] names = ["h1", "f1", "o1", "o2"];
        foreach (var kind in new[] { "all", "any", "none" })
        {
            foreach (var inner in new[] { "all", "any", "none" })
            {
                var condition = Join(kind, [Join(inner, [Asks(names[0]), Asks(names[2])]), Asks(names[1]), Asks(names[3])]);
                var before = Judge.Of(condition, Look).Truth;
                foreach (var learnt in new[] { "h", "f" })
                {
                    var after = Judge.Of(condition, name => Look(name.Replace("o", learnt, StringComparison.Ordinal))).Truth;

                    Assert.True(before == Truth.Open || before == after, $"{kind} {inner} {learnt}");
                }
            }
        }
    }

    private static Condition Join(string kind, ImmutableArray<Condition> parts) => kind switch
    {
        "all" => new Condition.AllOf(parts, Place.None),
        "any" => new Condition.AnyOf(parts, Place.None),
        _ => new Condition.NoneOf(parts, Place.None),
    };

    private static Condition Asks(string name) => new Condition.Asks(name, new Comparison.IsOneOf(["yes"]), Place.None);

    private static Given Look(string name) => name[0] switch
    {
        'h' => new Given.Set(name, Value.YesNo(true)),
        'f' => new Given.Set(name, Value.YesNo(false)),
        'o' => new Given.Derived(name, Standing.Unknown, null, NoReason),
        _ => new Given.Derived(name, Standing.NotAsked, null, NoReason),
    };

    private static readonly Because NoReason = new("", "", Place.None, Truth.Open, [], LocalText.Empty, []);
}
