using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Ways;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Questions;

/// <summary>Which dated steps and added lines rest on what is taken for an answer that nobody has given.</summary>
internal static class Taken
{
    /// <summary>What the assumed world takes, each with the items that are in the base plan because of it, or whose number it gives.</summary>
    public static ImmutableArray<Assumption> Of(WayPlan plan, World world)
    {
        var way = plan.Case;
        var steps = plan.Steps.Where(s => s.Dates is { Done: false }).Select(s => (Name: NameOf(s.Step.Item), Under: Under(s.Step, way)));
        var costs = plan.Costs.Where(c => c.Added).Select(c => (Name: NameOf(c.Cost.Item), Under: Under(c.Cost, way).Concat(UnderNumber(c.Cost.Item, way))));
        var resting = steps.Concat(costs).SelectMany(i => i.Under.Distinct(StringComparer.Ordinal).Select(question => (question, i.Name))).ToLookup(x => x.question, x => x.Name, StringComparer.Ordinal);
        return [.. world.Taken.Select(t => t with { Brings = [.. resting[t.Question.Name]] })];
    }

    private static ItemName NameOf(Rule rule) => new(rule.Head.Kind, rule.Head.Id);

    // What is still open about it, as far as it decides where every answer is definite.
    private static IEnumerable<string> Under<T>(Planned<T> planned, WayCase way)
        where T : Rule => planned.State != ItemState.Open ? [] : Both(planned.Because, Judge.Of(planned.Item.Head.AppliesIf, way.InWorld).Deciding);

    private static IEnumerable<string> UnderNumber(Cost cost, WayCase way) =>
        Quantities.Reason(cost, way) is { } open && way.InWorld(cost.Quantity!) is { } given ? Both(open, [new(new(given.Name, new Comparison.Within(null, null), cost.Head.Place), given, Truth.Holds)]) : [];

    private static IEnumerable<string> Both(Because open, ImmutableArray<Leaf> definite)
    {
        var decides = definite.SelectMany(Names).ToFrozenSet(StringComparer.Ordinal);
        return open.Unsettled.Select(q => q.Name).Where(decides.Contains);
    }

    private static IEnumerable<string> Names(Leaf leaf) => leaf.Given switch
    {
        Given.Answered answered => [answered.Name],
        Given.Derived derived => derived.Because.Deciding.SelectMany(Names),
        _ => [],
    };
}
