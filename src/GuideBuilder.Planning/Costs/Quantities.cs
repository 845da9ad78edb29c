using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Costs;

/// <summary>How many of a price a line takes.</summary>
internal static class Quantities
{
    /// <summary>One, or the named amount in the unit that its name is known by (so a price is per that unit); null when the world gives none.</summary>
    public static decimal? Of(Cost cost, Func<string, Value?> world, Guidance guidance) =>
        cost.Quantity is not { } name ? 1 : Of(world(name), UnitOf(name, guidance));

    /// <summary>The amount in a unit, or in its own where none is given; null for what is no amount.</summary>
    public static decimal? Of(Value? value, Unit? unit) => value is Value.Amount amount ? amount.Quantity.In(unit ?? amount.Quantity.Unit).Amount : null;

    /// <summary>Why the number is still open; null when it is not.</summary>
    public static Because? Reason(Cost cost, WayCase way) => cost.Quantity is { } name ? Reason(cost.Head, name, way) : null;

    /// <summary>Why the amount that an entry takes by that name is still open; null when it is not.</summary>
    public static Because? Reason(RuleHead head, string name, WayCase way)
    {
        if (way.Lookup(name) is not { Standing: Standing.Unknown } given)
        {
            return null;
        }

        var leaf = new Leaf(new(name, new Comparison.Within(null, null), head.Place), given, Truth.Open);
        return Items.Reason(head, new(Truth.Open, [leaf]));
    }

    /// <summary>The unit that a name is known by; null where it has none.</summary>
    public static Unit? UnitOf(string name, Guidance guidance) =>
        CalculatedFact.All.FirstOrDefault(f => f.Name == name)?.Unit
        ?? guidance.Facts.FirstOrDefault(f => f.Id == name)?.Unit
        ?? guidance.Questions.FirstOrDefault(q => q.Name == name)?.Range?.Unit;
}
