using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Ways;

/// <summary>Which ways there are, and which of them the handbook follows.</summary>
internal static class WayChoice
{
    /// <summary>Every way with its state, in guidance order; its reason says whether it is what was wished for as well.</summary>
    public static ImmutableArray<Planned<Way>> Ways(ImmutableArray<Way> ways, Lookup lookup) =>
        [.. ways.Select(w => Items.Plan(w, lookup) with { Because = Items.Reason(w.Head, Judge.Of(new Condition.AllOf([w.Head.AppliesIf, w.MeetsWishIf], w.Head.Place), lookup)) })];

    /// <summary>The wished way if it is not ruled out, else the first that meets the wish, else the first that may, else the first that is left, in guidance order; null when all are ruled out.</summary>
    public static Planned<Way>? Of(ImmutableArray<Planned<Way>> ways, string? wished) =>
        ways.FirstOrDefault(w => w.Item.Id == wished && w.IsPresent)
        ?? ways.FirstOrDefault(w => w.Because.Truth == Truth.Holds)
        ?? ways.FirstOrDefault(w => w.Because.Truth == Truth.Open)
        ?? ways.FirstOrDefault(w => w.IsPresent);

    /// <summary>Ways that are judged by a fact which follows from the way itself.</summary>
    public static IEnumerable<Fault> Faults(Guidance guidance)
    {
        var asks = guidance.Facts.ToDictionary(f => f.Id, f => f.Rows.SelectMany(r => r.When.Names).Concat(f.Head.AppliesIf.Names).ToArray(), StringComparer.Ordinal);
        foreach (var calculator in Calculators.ByName.Values)
        {
            asks[calculator.Name] = [.. calculator.Needs, .. calculator.MayUse];
        }

        return guidance.Ways.Where(w => Reaches(w.Head.AppliesIf.Names.Concat(w.MeetsWishIf.Names), asks, [])).Select(w => PlanningFaults.WayAsksWay(w.Id, w.Head.Place));
    }

    private static bool Reaches(IEnumerable<string> names, Dictionary<string, string[]> asks, HashSet<string> seen) =>
        names.Any(n => n == CalculatedFact.Way || (seen.Add(n) && asks.TryGetValue(n, out var next) && Reaches(next, asks, seen)));
}
