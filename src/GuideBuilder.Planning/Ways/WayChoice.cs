using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Ways;

/// <summary>Which way the handbook follows.</summary>
internal static class WayChoice
{
    /// <summary>The wished way if it is not ruled out, else the first settled one, else the first open one, in guidance order; null when all are ruled out.</summary>
    public static Planned<Way>? Of(ImmutableArray<Planned<Way>> ways, string? wished) =>
        ways.FirstOrDefault(w => w.Item.Id == wished && w.IsPresent)
        ?? ways.FirstOrDefault(w => w.State == ItemState.Settled)
        ?? ways.FirstOrDefault(w => w.State == ItemState.Open);

    /// <summary>Ways that are judged by a fact which follows from the way itself.</summary>
    public static IEnumerable<Fault> Faults(Guidance guidance)
    {
        var asks = guidance.Facts.ToDictionary(f => f.Id, f => f.Rows.SelectMany(r => r.When.Names).Concat(f.Head.AppliesIf.Names).ToArray(), StringComparer.Ordinal);
        foreach (var calculator in Calculators.ByName.Values)
        {
            asks[calculator.Name] = [.. calculator.Needs, .. calculator.MayUse];
        }

        return guidance.Ways.Where(w => Reaches(w.Head.AppliesIf.Names, asks, [])).Select(w => PlanningFaults.WayAsksWay(w.Id, w.Head.Place));
    }

    private static bool Reaches(IEnumerable<string> names, Dictionary<string, string[]> asks, HashSet<string> seen) =>
        names.Any(n => n == CalculatedFact.Way || (seen.Add(n) && asks.TryGetValue(n, out var next) && Reaches(next, asks, seen)));
}
