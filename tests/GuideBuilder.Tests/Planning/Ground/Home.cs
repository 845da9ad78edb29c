using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Ground;

/// <summary>Homes as answers about the ground: what is not given is unknown, and what a calculator needs of the facts is given as one.</summary>
internal static class Home
{
    public static readonly Tables Tables = Content.Guidance.Tables;

    public static readonly GroundFigures Figures = GroundFigures.From(Tables);

    /// <summary>A joint outside in clay, three metres of trench, everything known.</summary>
    public static readonly (string, object)[] Known =
    [
        ("joint-outside", "yes"), ("breaks-ground", "yes"), ("household-may-uncover", "no"),
        ("operator.hole-size", Metres(1.2m)), ("operator.hole-width", Metres(1.2m)), ("operator.hole-depth", Metres(0.8m)), ("ground.length", Metres(3)), ("ground.depth-given", Metres(0.5m)),
        ("ground.soil", "clay"), ("ground.surface", "none"), ("ground.wet", "no"), ("ground.trees", "no"), ("ground.who-digs", "household"), ("ground.who-uncovers", "operator"), ("operator.who-fills", "household"),
        ("ground.joint-place", "own-land"), ("ground.footing-distance", Metres(2)), ("operator.duct-bore", Quantity.Of(38, "mm")), ("ground.cable-exposed", "no"),
    ];

    public static Quantity Metres(decimal amount) => Quantity.Of(amount, "m");

    /// <summary>A lookup with these answers and facts; of two for one name the last counts, and a text of null takes one away.</summary>
    public static Lookup Of(params (string Name, object? Value)[] given)
    {
        var last = given.GroupBy(g => g.Name).ToDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal);
        var answers = Small.Answers(Content.Guidance, [.. last.Where(g => g.Value is not null && g.Key.Contains('.')).Select(g => (g.Key, g.Value!))]);
        return name => answers.ByName.TryGetValue(name, out var answer) ? answer : Fact(name, last.GetValueOrDefault(name));
    }

    public static Lookup With(params (string Name, object? Value)[] changed) => Of([.. Known.Select(k => (k.Item1, (object?)k.Item2)), .. changed]);

    public static Quantity? Amount(string name, Lookup lookup) => (GroundFacts.ByName[name](lookup, Tables) as Value.Amount)?.Quantity;

    public static SheetRow Line(this GroundSheet sheet, string id) => Assert.Single(sheet.Rows, r => r.Id == id);

    private static Given.Derived Fact(string name, object? option) => new(
        name, option is null ? Standing.Unknown : Standing.Known, option is string id ? new Value.Option(id) : null, new("fact", name, Place.None, Truth.Open, [], LocalText.Empty, []));
}
