using System.Collections.Immutable;
using GuideBuilder.Model;
using GuideBuilder.Tests.Situations;
using GuideBuilder.Tests.Support;
using Home = GuideBuilder.Tests.Support.Home;

namespace GuideBuilder.Tests.Cases;

/// <summary>Each statement about a home can fail: in a copy of the guidance in which the condition of one of its items says the contrary, the statement is found wrong.</summary>
public sealed class TurnedConditionTests
{
    private static readonly Condition Never = new Condition.AnyOf([], Place.None);

    [Fact]
    public void A_turned_condition_is_found_by_the_statement_that_rests_on_it()
    {
        var all = Turns().ToImmutableArray();
        var tried = Math.Min(Sizes.Of("conditions-turned"), all.Length);

        Findings.AreNone(Enumerable.Range(0, tried).Select(i => all[(int)((long)i * all.Length / tried)]).Where(t => !IsFound(t)).Select(t => $"{t.Name} {t.Statement.Says}: {t.Item} turned, and nothing is missing"));
    }

    private static IEnumerable<Turn> Turns() =>
        from said in Situation.All.SelectMany(s => s.Statements.Select(x => (Name: $"{s.Id} ({x.Letter})", Home: (Func<Guidance, Home>)(g => Home.At($"tests/GuideBuilder.Tests/Situations/{s.Id}.yaml", g)), Statement: x)))
            .Concat(new[] { "hazards.yaml", "parties.yaml" }.SelectMany(f => Case.In(f)).Select(c => (Name: c.Statement.Letter, Home: (Func<Guidance, Home>)(g => Home.Given(c.Answers, g)), Statement: c.Statement)))
        from item in said.Statement.Present.Concat(said.Statement.Settled).Select(i => (Id: i, Condition: Never)).Concat(said.Statement.Open.Concat(said.Statement.RuledOut).Select(i => (Id: i, Condition: Condition.Always)))
        where !IsWay(item.Id)
        select new Turn(said.Name, said.Home, said.Statement, item.Id, item.Condition);

    private static bool IsFound(Turn turn)
    {
        var home = turn.Home(With(Content.Guidance, turn.Item, turn.Condition));
        return turn.Statement.On.Any(o => !home.Pages.Contains(o.Page)) || home.Missing(turn.Statement).Any();
    }

    private static bool IsWay(string id) => Content.Guidance.Ways.Any(w => w.Id == id);

    private static Guidance With(Guidance guidance, string id, Condition when) => guidance with
    {
        Parties = Turned(guidance.Parties, id, when),
        Steps = Turned(guidance.Steps, id, when),
        Costs = Turned(guidance.Costs, id, when),
        Hazards = Turned(guidance.Hazards, id, when),
        Consents = Turned(guidance.Consents, id, when),
        Clocks = Turned(guidance.Clocks, id, when),
    };

    private static ImmutableArray<T> Turned<T>(ImmutableArray<T> rules, string id, Condition when)
        where T : Rule => [.. rules.Select(r => r.Id == id ? (T)(r with { Head = r.Head with { AppliesIf = when } }) : r)];

    private sealed record Turn(string Name, Func<Guidance, Home> Home, Statement Statement, string Item, Condition Condition);
}
