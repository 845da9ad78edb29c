using GuideBuilder.Planning.Electrical;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Planning.Siting;
using GuideBuilder.Planning.SupplyNumbers;

namespace GuideBuilder.Planning.Derived;

/// <summary>Every calculator, in the order of <see cref="CalculatedFact.All"/>. The one place where arithmetic meets the names that conditions and costs use.</summary>
internal static class Calculators
{
    private static readonly ImmutableArray<Calculator> Written =
        [.. GroundFacts.Calculators(), .. ElectricalFacts.Calculators(), .. SupplyFacts.Calculators(), .. SitingFacts.Calculators()];

    /// <summary>The calculators by name.</summary>
    public static FrozenDictionary<string, Calculator> ByName { get; } =
        CalculatedFact.All.Select(f => Written.FirstOrDefault(c => c.Name == f.Name) ?? NotYet(f.Name)).ToFrozenDictionary(c => c.Name, StringComparer.Ordinal);

    // Arithmetic that is not written yet gives no value: the fact is unknown, and whatever asks it stays open.
    private static Calculator NotYet(string name) => new(name, [], [], _ => null);
}
