using GuideBuilder.Planning;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

public sealed class ElectricalTableTests
{
    private const decimal Rounding = 0.03m;

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

    // The table is rounded to two figures, and from 25 mm² on it adds reactance to resistance.
    [Theory]
    [InlineData(CableFamily.Tails)]
    [InlineData(CableFamily.FlatTwinAndEarth)]
    [InlineData(CableFamily.Armoured70)]
    [InlineData(CableFamily.Armoured90)]
    public void The_resistances_of_IEC_60228_give_the_voltage_drop_table_within_its_rounding(CableFamily family)
    {
        var compared = (
            from cable in Cable.Sizes(Figures, family)
            from phases in Enum.GetValues<Phases>()
            let printed = cable.Drop(Figures, phases)
            let expected = VoltageDrop.Expected(Figures, cable.Size, phases, cable.Temperature)
            where printed is not null && expected is not null
            select (Name: $"{cable.Size} {phases}", Printed: printed.Amount, Expected: expected.Amount)).ToArray();

        Assert.InRange(compared.Length, 3, 12);
        Findings.AreNone(from c in compared where Math.Abs(c.Printed - c.Expected) > Rounding * c.Expected select $"{c.Name}: {c.Printed} printed, {c.Expected} expected");
    }

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
