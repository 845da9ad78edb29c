using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Planning.Electrical;

/// <summary>Homes as electrical answers: what is not given is unknown.</summary>
internal static class Home
{
    public static readonly Tables Tables = Content.Guidance.Tables;

    public static readonly ElectricalFigures Figures = ElectricalFigures.From(Tables);

    /// <summary>A gas-heated home, everything known, its combined earth measured and kept.</summary>
    public static readonly (string, object)[] Known =
    [
        ("loads.shower", Quantity.Of(0, "kW")), ("loads.cooker", Quantity.Of(3, "kW")), ("loads.heat-pump", "none"), ("loads.charger", "none"), ("loads.storage-heating", "no"),
        ("loads.hot-tub", "no"), ("loads.outbuilding", "no"), ("loads.workshop", "no"), ("loads.caravan-or-boat", "no"), ("place.box-metal", "no"),
        ("intake.phases", "single"), ("intake.fuse-rating", Quantity.Of(80, "A")), ("intake.looped", "no"), ("intake.signs", Array.Empty<string>()),
        ("intake.earthing", "combined"), ("operator.earth-offered", "combined"), ("intake.earth-reading", Quantity.Of(0.2m, "Ω")),
        ("place.tails-length", Quantity.Of(6, "m")), ("operator.tails-limit", Quantity.Of(3, "m")),
    ];

    /// <summary>A lookup over the questions of content/ with these answers; of two for one question the last counts.</summary>
    public static Lookup Of(params (string Name, object Value)[] given)
    {
        var answers = Small.Answers(Content.Guidance, [.. given.Reverse()]);
        return name => answers[name];
    }

    public static Value? Fact(string name, Lookup lookup) => ElectricalFacts.ByName[name](lookup, Tables);

    public static ElectricalSheet Sheet(params (string Name, object Value)[] given) => ElectricalSheets.Of(Of(given), Tables);

    public static SheetRow Line(this ElectricalSheet sheet, string id) => Assert.Single(sheet.Rows, r => r.Id == id);
}
