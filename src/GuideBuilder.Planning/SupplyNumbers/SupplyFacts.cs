using GuideBuilder.Planning.Derived;
using Numbers = GuideBuilder.Model.SupplyNumbers;

namespace GuideBuilder.Planning.SupplyNumbers;

/// <summary>The facts supply.… that conditions may use. A number that is not known leaves both unknown; the home's own nation always wins over the number.</summary>
public static class SupplyFacts
{
    private const string Nation = "home.nation";
    private const string NumberQuestion = "home.supply-number";

    /// <summary>The calculators, with the questions that each rests on.</summary>
    internal static ImmutableArray<Calculator> Calculators() =>
    [
        new("supply.number", [Nation, NumberQuestion], [], inputs => Read(inputs) is { } number ? new Value.Option(Kind(number)) : null),
        new("supply.area", [Nation, NumberQuestion], [], inputs => Read(inputs) is { } number ? new Value.Option(Area(number)) : null),
    ];

    /// <summary>The number of the home, or null.</summary>
    internal static SupplyNumber? Read(Inputs inputs) =>
        inputs.Words(NumberQuestion) is { } text ? Numbers.Read(text, inputs.Option(Nation), inputs.Tables) : null;

    /// <summary>The option of supply.number.</summary>
    internal static string Kind(SupplyNumber number) => number.Kind switch
    {
        SupplyNumberKind.ElectricityGreatBritain => "electricity-gb",
        SupplyNumberKind.ElectricityNorthernIreland or SupplyNumberKind.ElectricityIreland => "electricity-ni-or-ie",
        SupplyNumberKind.Gas => "gas",
        SupplyNumberKind.NotASupplyNumber => "not-a-supply-number",
        _ => throw new UnreachableException(),
    };

    private static string Area(SupplyNumber number) => number.Kind switch
    {
        SupplyNumberKind.ElectricityGreatBritain => number.IsIndependent ? "independent" : "regional",
        SupplyNumberKind.ElectricityNorthernIreland => "northern-ireland",
        SupplyNumberKind.ElectricityIreland => "ireland",
        _ => "not-known",
    };
}
