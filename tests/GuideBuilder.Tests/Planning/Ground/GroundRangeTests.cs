using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Planning.Ground.Home;

namespace GuideBuilder.Tests.Planning.Ground;

public sealed class GroundRangeTests
{
    private static readonly Soil Clay = Soil.Find(Figures, "clay")!;

    public static TheoryData<decimal> Absurd => [-1m, -0.001m, 100000m];

    [Theory]
    [MemberData(nameof(Absurd))]
    public void Lengths_that_make_no_sense_give_nothing(decimal amount)
    {
        var (odd, one, bed) = (Metres(amount), Metres(1), Metres(0.075m));

        Assert.All(
            new object?[]
            {
                JointHole.Depth(Figures, odd, Metres(0.025m), Metres(0.2m)), JointHole.Depth(Figures, one, odd, Metres(0.2m)), JointHole.Depth(Figures, one, Metres(0.025m), odd),
                JointHole.Volume(Figures, odd, one, one), JointHole.Volume(Figures, one, one, odd), JointHole.SlopedVolume(Figures, one, one, odd, Quantity.Number(1)),
                JointHole.PartlySlopedVolume(Figures, one, one, odd, Quantity.Number(1), 2), JointHole.PartlySlopedVolume(Figures, one, one, one, Quantity.Number(1), 3),
                JointHole.Top(Figures, odd, one, Quantity.Number(1)), JointHole.CoverFor(Figures, odd, Metres(0.025m), Metres(0.2m)),
                Trench.Depth(Figures, odd, Metres(0.05m), bed), Trench.Volume(Figures, odd, Metres(0.3m), one), Sand.InTrench(Figures, odd, Metres(0.3m), bed, Metres(0.05m), bed),
                Heap.SetBack(Figures, odd), Clearances.HandDigging(Figures, odd), Clearances.Bend(Figures, "bend-lead", odd), Clearances.FromFooting(Figures, odd, one),
                Filling.TapeDepth(Figures, odd), Filling.Layers(Figures, one, odd), Guarding.Barrier(Figures, odd, one), Guarding.RainWater(Figures, Quantity.Of(1, "m²"), odd),
                Labour.BarrowHours(Figures, Quantity.Of(1, "m³"), odd), Labour.DigHours(Figures, Quantity.Of(1, "m³"), Clay, Dig.Pit, odd), Sides.Fits(Figures, odd, Quantity.Number(1), one),
            },
            Assert.Null);
        Assert.Equal(SideAdvice.NotKnown, Sides.For(Figures, odd, Clay, false));
    }

    [Fact]
    public void Another_dimension_gives_nothing() => Assert.All(
        new object?[]
        {
            JointHole.Depth(Figures, Quantity.Of(1, "kg"), Metres(0.025m), Metres(0.2m)), JointHole.Volume(Figures, Metres(1), Quantity.Of(1, "m²"), Metres(1)),
            Spoil.Mass(Figures, new Layer(Clay, Metres(1))), Containers.Barrows(Figures, Metres(1), Quantity.Of(1, "kg")), Clearances.IsSmallOpening(Figures, Metres(1)),
        },
        Assert.Null);

    [Fact]
    public void Division_by_nothing_gives_nothing() => Assert.All(
        new object?[]
        {
            Heap.Ridge(Figures, Quantity.Of(1, "m³"), Metres(0), Quantity.Number(35)), Filling.Layers(Figures, Metres(1), Metres(0)), Containers.Loads(Figures, Quantity.Of(1, "m³"), Quantity.Of(0, "m³")),
            Heap.Cone(Figures, Quantity.Of(1, "m³"), Quantity.Number(90)), Sides.OfAngle(Figures, Quantity.Number(0)), Spoil.ToFill(Figures, Quantity.Of(1, "m³"), Quantity.Number(0)),
        },
        Assert.Null);

    [Fact]
    public void Missing_inputs_give_nothing() => Assert.All(
        new object?[]
        {
            JointHole.Depth(Figures, null, Metres(0.025m), Metres(0.2m)), JointHole.Volume(Figures, Metres(1), null, Metres(1)), Containers.Skip(Figures, null, Quantity.Of(1, "kg")),
            Labour.DigHours(Figures, Quantity.Of(1, "m³"), null, Dig.Pit, Metres(1)), Labour.FillHours(Figures, Quantity.Of(1, "m³"), null), Labour.Times(Figures, Quantity.Of(1, "hours"), [null]),
        },
        Assert.Null);

    [Theory]
    [InlineData("vibrotamper-50", true, 0.15, 8)]
    [InlineData("plate-1800", false, 0.2, 7)]
    [InlineData("plate-1400", true, 0.1, null)]
    [InlineData("rammer-10", false, 0.15, null)]
    [InlineData("plate-1800", false, 0.25, null)]
    [InlineData("spade", false, 0.1, null)]
    public void Passes_are_those_of_the_table_or_not_allowed(string machine, bool cohesive, double thickness, int? passes) =>
        Assert.Equal(passes, (int?)Filling.Passes(Figures, machine, cohesive, Metres((decimal)thickness))?.Amount);

    [Fact]
    public void The_tables_are_read_without_a_fault() =>
        Findings.AreNone(from fault in Content.Faults where GroundFigures.Names.Any(n => fault.Place.Path.EndsWith($"tables/{n}.yaml", StringComparison.Ordinal)) select fault.ToString());

    [Fact]
    public void Every_row_stands_once_in_both_tables_and_names_a_source_and_a_day()
    {
        Assert.Equal(Figures.Rows.Length, Figures.Rows.DistinctBy(r => r.Id).Count());
        Findings.AreNone(from row in Figures.Rows where row.Basis.Sources.IsEmpty || row.Basis.AsAt is null select row.Id);
    }

    [Fact]
    public void Every_answer_about_the_soil_has_its_row() =>
        Assert.All(Content.Guidance.Questions.Single(q => q.Name == "ground.soil").Options, o => Assert.NotNull(Soil.Answered(Figures, Home.Of(("ground.soil", o.Id)))));

    [Fact]
    public void Every_soil_has_all_its_figures() => Findings.AreNone(
        from row in Figures.Group("soil-")
        from cell in new[] { "cubic-metre", "bulking", "slope", "repose", "pit", "pit-deep", "trench", "trench-deep", "fill", "packing" }
        where row.Cells.GetValueOrDefault(cell)?.Quantity is not { Amount: > 0 }
        select $"{row.Id}.{cell}");
}
