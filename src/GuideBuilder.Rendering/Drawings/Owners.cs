using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>Whose each part of a supply is, and the hatch by which every drawing shows it.</summary>
internal static class Owners
{
    private const string NetworkOperator = "network-operator";
    private const string Supplier = "supplier";

    /// <summary>The parts from the street to the board, each with its owner's party id; where one business owns the networks, the meter is its too.</summary>
    internal static ImmutableArray<(string Part, string Owner)> Parts(Bindery bindery)
    {
        var oneBusiness = bindery.Plan.Facts.Derived.GetValueOrDefault("one-networks-business") is { Standing: Standing.Known, Value: Value.Option { Id: "yes" } };
        return
        [
            ("service-cable", NetworkOperator),
            ("cutout", NetworkOperator),
            ("tails-before", oneBusiness ? NetworkOperator : Supplier),
            ("meter", oneBusiness ? NetworkOperator : Supplier),
            ("tails-after", Party.Household),
            ("board", Party.Household),
        ];
    }

    /// <summary>The hatch of an owner: lines for the network operator, crossed lines for the supplier, none for the household.</summary>
    internal static Hatch HatchOf(string owner) => owner switch
    {
        NetworkOperator => Hatch.Rising,
        Supplier => Hatch.Crossed,
        Party.Household => Hatch.None,
        _ => Hatch.Dotted,
    };
}
