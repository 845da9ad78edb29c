using UnitsNet;
using UnitsNet.Units;
using Unit = GuideBuilder.Model.Unit;

namespace GuideBuilder.Tests.Model.Quantities;

/// <summary>Our table of units against a library that others keep.</summary>
public sealed class UnitTests
{
    private static readonly Dictionary<string, (Enum Unit, Enum Base)> Theirs = new(StringComparer.Ordinal)
    {
        ["%"] = (RatioUnit.Percent, RatioUnit.DecimalFraction),
        ["mm"] = (LengthUnit.Millimeter, LengthUnit.Meter),
        ["cm"] = (LengthUnit.Centimeter, LengthUnit.Meter),
        ["m"] = (LengthUnit.Meter, LengthUnit.Meter),
        ["in"] = (LengthUnit.Inch, LengthUnit.Meter),
        ["ft"] = (LengthUnit.Foot, LengthUnit.Meter),
        ["m²"] = (AreaUnit.SquareMeter, AreaUnit.SquareMeter),
        ["mm²"] = (AreaUnit.SquareMillimeter, AreaUnit.SquareMeter),
        ["m³"] = (VolumeUnit.CubicMeter, VolumeUnit.CubicMeter),
        ["kg"] = (MassUnit.Kilogram, MassUnit.Kilogram),
        ["t"] = (MassUnit.Tonne, MassUnit.Kilogram),
        ["kW"] = (PowerUnit.Kilowatt, PowerUnit.Kilowatt),
        ["W"] = (PowerUnit.Watt, PowerUnit.Kilowatt),
        ["A"] = (ElectricCurrentUnit.Ampere, ElectricCurrentUnit.Ampere),
        ["V"] = (ElectricPotentialUnit.Volt, ElectricPotentialUnit.Volt),
        ["Ω"] = (ElectricResistanceUnit.Ohm, ElectricResistanceUnit.Ohm),
        ["days"] = (DurationUnit.Day, DurationUnit.Day),
        ["weeks"] = (DurationUnit.Week, DurationUnit.Day),
        ["hours"] = (DurationUnit.Hour, DurationUnit.Hour),
        ["minutes"] = (DurationUnit.Minute, DurationUnit.Hour),
    };

    // What the library has no like of: plain numbers, working days, money; and two base units that convert to nothing else.
    private static readonly string[] OursAlone = ["", "kVA", "mΩ/m", "working days", "£", "€"];

    public static TheoryData<string> Compared => [.. Theirs.Keys];

    [Theory]
    [MemberData(nameof(Compared))]
    public void A_unit_is_as_many_base_units_as_the_library_says(string symbol)
    {
        var (unit, basis) = Theirs[symbol];

        Assert.Equal(UnitConverter.Convert(1, unit, basis), (double)Unit.Of(symbol).InBase, 1e-12);
    }

    [Fact]
    public void Every_unit_is_compared_or_ours_alone() =>
        Assert.Equal(Unit.All.Select(u => u.Symbol).Order(StringComparer.Ordinal), Theirs.Keys.Concat(OursAlone).Order(StringComparer.Ordinal));
}
