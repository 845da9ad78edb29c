namespace GuideBuilder.Model;

/// <summary>A unit that a person may write: its symbol as printed, what it measures, and how many base units one of it is (exact).</summary>
public sealed record Unit(string Symbol, Dimension Dimension, decimal InBase)
{
    /// <summary>The unit of a bare number.</summary>
    public static Unit One { get; } = new("", Dimension.Number, 1m);

    /// <summary>Every unit, in the order in which the guide for editors lists them. Inch and foot are exact: 25.4 mm and 304.8 mm (international yard and pound agreement, 1959).</summary>
    public static ImmutableArray<Unit> All { get; } =
    [
        One,
        new("%", Dimension.Share, 0.01m),
        new("mm", Dimension.Length, 0.001m),
        new("cm", Dimension.Length, 0.01m),
        new("m", Dimension.Length, 1m),
        new("in", Dimension.Length, 0.0254m),
        new("ft", Dimension.Length, 0.3048m),
        new("m²", Dimension.Area, 1m),
        new("mm²", Dimension.Area, 0.000001m),
        new("m³", Dimension.Volume, 1m),
        new("kg", Dimension.Mass, 1m),
        new("t", Dimension.Mass, 1000m),
        new("kW", Dimension.Power, 1m),
        new("W", Dimension.Power, 0.001m),
        new("kVA", Dimension.ApparentPower, 1m),
        new("A", Dimension.Current, 1m),
        new("V", Dimension.Voltage, 1m),
        new("Ω", Dimension.Resistance, 1m),
        new("mΩ/m", Dimension.ResistancePerLength, 1m),
        new("days", Dimension.CalendarTime, 1m),
        new("weeks", Dimension.CalendarTime, 7m),
        new("working days", Dimension.WorkingTime, 1m),
        new("hours", Dimension.ClockTime, 1m),
        new("minutes", Dimension.ClockTime, 1m / 60m),
        new("£", Dimension.Pounds, 1m),
        new("€", Dimension.Euros, 1m),
    ];

    /// <summary>The unit of that symbol, or null. Accepts the singular and the plain-keyboard forms (day, m2, ohm, square metres …).</summary>
    public static Unit? Find(string symbol)
    {
        var plain = OtherSpellings.GetValueOrDefault(symbol, symbol);
        return All.FirstOrDefault(u => u.Symbol == plain);
    }

    /// <summary>Every way to write a unit of that dimension and the unit it names, in ordinal order.</summary>
    public static IEnumerable<(string Spelling, Unit Unit)> SpellingsOf(Dimension dimension) =>
        All.Select(u => (u.Symbol, Unit: u)).Concat(OtherSpellings.Select(o => (o.Key, Unit: Of(o.Value))))
            .Where(s => s.Unit.Dimension == dimension)
            .OrderBy(s => s.Item1, StringComparer.Ordinal);

    /// <summary>The unit of that symbol; for symbols that stand in this program.</summary>
    public static Unit Of(string symbol) => Find(symbol) ?? throw new UnreachableException($"no unit {symbol}");

    private static readonly FrozenDictionary<string, string> OtherSpellings = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["metre"] = "m", ["metres"] = "m", ["foot"] = "ft", ["feet"] = "ft", ["inch"] = "in", ["inches"] = "in", ["\""] = "in", ["'"] = "ft",
        ["m2"] = "m²", ["mm2"] = "mm²", ["m3"] = "m³", ["tonne"] = "t", ["tonnes"] = "t", ["amp"] = "A", ["amps"] = "A", ["kva"] = "kVA", ["kw"] = "kW",
        ["ohm"] = "Ω", ["ohms"] = "Ω", ["day"] = "days", ["week"] = "weeks", ["working day"] = "working days", ["hour"] = "hours", ["h"] = "hours",
        ["minute"] = "minutes", ["min"] = "minutes", ["percent"] = "%", ["GBP"] = "£", ["EUR"] = "€",
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
