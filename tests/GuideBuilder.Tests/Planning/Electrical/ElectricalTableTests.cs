using GuideBuilder.Planning;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

public sealed class ElectricalTableTests
{
    [Fact]
    public void The_electrical_table_is_read_without_a_fault() =>
        Findings.AreNone(from fault in Content.Faults where fault.Place.Path.EndsWith("tables/electrical.yaml", StringComparison.Ordinal) select fault.ToString());

    [Fact]
    public void Every_row_stands_once_and_names_a_source_and_a_day()
    {
        Assert.Equal(Figures.Rows.Length, Figures.Rows.DistinctBy(r => r.Id).Count());
        Findings.AreNone(from row in Figures.Rows where row.Basis.Sources.IsEmpty || row.Basis.AsAt is null select row.Id);
    }

    [Fact]
    public void Every_cell_that_begins_with_a_digit_is_a_quantity() =>
        Findings.AreNone(
            from row in Figures.Rows
            from cell in row.Cells
            where cell.Value.Words.Length > 0 && char.IsAsciiDigit(cell.Value.Words[0]) && cell.Value.Quantity is null
            select $"{row.Id}.{cell.Key}: {cell.Value.Words}");

    // A printed figure may differ by one step of the table's rounding: 0.1 from 2 mΩ/m up, 0.05 from 1 up, 0.01 below. From 25 mm² on the table gives z, of which the resistance is a part: z² = r² + x².
    [Theory]
    [InlineData(CableFamily.Tails, 8)]
    [InlineData(CableFamily.FlatTwinAndEarth, 3)]
    [InlineData(CableFamily.Armoured70, 12)]
    [InlineData(CableFamily.Armoured90, 12)]
    public void The_resistances_of_IEC_60228_give_the_voltage_drop_table_within_its_rounding(CableFamily family, int figures)
    {
        var compared = (
            from cable in Cable.Sizes(Figures, family)
            from phases in Enum.GetValues<Phases>()
            let printed = cable.Drop(Figures, phases)?.Amount
            let resistance = VoltageDrop.Expected(Figures, cable.Size, phases, cable.Temperature)?.Amount
            where printed is not null
            select (Name: $"{family} {cable.Size} {phases}", Size: cable.Size.Amount, Phases: phases, Printed: printed.Value, Resistance: resistance)).ToArray();

        Assert.Equal(figures, compared.Length);
        Findings.AreNone(
            from c in compared
            where c.Resistance is not { } r || Math.Abs(c.Printed - WithReactance(r, c.Size, c.Phases)) > Step(c.Printed)
            select $"{c.Name}: {c.Printed} printed, {c.Resistance} expected");
    }

    // Reactance of table 4E4B in mΩ/m, read beside its impedances; that of 50 mm² from memory.
    private static decimal WithReactance(decimal resistance, decimal size, Phases phases)
    {
        var one = size switch { < 25 => 0, 25 => 0.16m, 35 => 0.155m, _ => 0.155m };
        var three = size switch { < 25 => 0, 25 => 0.14m, 35 => 0.135m, _ => 0.135m };
        var x = (double)(phases == Phases.One ? one : three);
        return (decimal)Math.Sqrt(((double)resistance * (double)resistance) + (x * x));
    }

    private static decimal Step(decimal printed) => printed >= 2 ? 0.1m : printed >= 1 ? 0.05m : 0.01m;

    [Fact]
    public void Area_times_resistance_of_two_core_armour_is_that_of_steel() => Assert.All(
        Figures.Group("armour-area-2-").Select(r => r.Find("size")!),
        size => Assert.InRange(Conductors.ArmourArea(Figures, size, 2)!.Amount * Conductors.Armour(Figures, size, 2)!.Amount, 153, 157));

    [Fact]
    public void Doubled_fuse_values_of_old_tables_are_the_ones_now_used_over_0_95() => Assert.All(
        Figures.Group("old-fuse-bs-1361-"),
        old => Assert.InRange(FaultLoops.GreatestForFuse(Figures, "bs-1361", old.Find("rating")!)!.Amount, (0.95m * old.Find("loop-5-seconds")!.Amount) - 0.01m, 0.95m * old.Find("loop-5-seconds")!.Amount));

    [Fact]
    public void Where_combined_earthing_must_not_go_is_said_of_caravans_and_boats()
    {
        Assert.Equal(CombinedRule.Barred, CombinedEarthing.For(Figures, "caravan-or-boat"));
        Assert.Equal(CombinedRule.Conditions, CombinedEarthing.For(Figures, "charger"));
        Assert.All(new[] { "hot-tub", "outbuilding", "metal-cabinet", "outdoor-metal" }, thing => Assert.Equal(CombinedRule.Ask, CombinedEarthing.For(Figures, thing)));
        Assert.Equal(6, CombinedEarthing.Things(Figures).Length);
    }
}
