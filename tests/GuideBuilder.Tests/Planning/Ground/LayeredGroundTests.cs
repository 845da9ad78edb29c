using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using static GuideBuilder.Tests.Planning.Ground.Home;

namespace GuideBuilder.Tests.Planning.Ground;

/// <summary>The surface and the ground below it, dug and weighed layer by layer.</summary>
public sealed class LayeredGroundTests
{
    private static readonly Gen<string> Surfaces = Gen.Int[0, 6].Select(i => new[] { "grass", "gravel", "block-paving", "slabs", "concrete", "tarmac", "none" }[i]);

    private static Quantity? Of(string line, params (string Name, object? Value)[] changed) =>
        (GroundSheets.Of(With(changed), With(changed), Home.Tables)!.Line(line).Result as Value.Amount)?.Quantity;

    // Hole 1.2 by 1.2 by 0.8 m, trench 3 by 0.3 by 0.5 m: 1.44 + 0.9 m2 opened, 1.152 + 0.45 m3 dug.
    [Fact]
    public void Block_paving_is_laid_aside_and_its_bed_weighed_apart()
    {
        var paving = ("ground.surface", (object?)"block-paving");

        Assert.Equal(2.34m * 0.06m, Of("layer-aside", paving)!.Amount);
        Assert.Equal(2.34m * 0.165m, Of("layer-bed", paving)!.Amount);
        Assert.Equal(1.602m - (2.34m * 0.225m), Of("layer-below", paving)!.Amount);
        Assert.Equal((0.3861m * 1.12m) + (1.0755m * 1.35m), Of("spoil-loose", paving)!.Amount);
        Assert.Equal(((0.3861m * 1900) + (1.0755m * 1850)) / 1000, Of("spoil-mass", paving)!.Amount);
    }

    [Fact]
    public void Concrete_is_broken_up_and_goes_away()
    {
        var concrete = ("ground.surface", (object?)"concrete");
        var big = ("operator.hole-size", (object?)Metres(3));
        var (bare, broken) = (GroundWorkHours("none"), GroundWorkHours("concrete"));

        Assert.Equal(0.234m, Of("layer-broken", concrete)!.Amount);
        Assert.Equal(((0.234m * 2400) + (0.234m * 1900) + ((1.602m - 0.468m) * 1850)) / 1000, Of("spoil-mass", concrete)!.Amount);
        Assert.True(Of("surplus-bags", concrete, big)!.Amount > Of("surplus-bags", ("ground.surface", "none"), big)!.Amount);
        Assert.Equal(Of("surplus", ("ground.surface", "none"))!.Amount, Of("surplus", concrete)!.Amount, 6);
        Assert.True(broken > bare);
    }

    [Fact]
    public void A_layer_of_nothing_has_no_line() =>
        Assert.DoesNotContain(GroundSheets.Of(With(), With(), Home.Tables)!.Rows, r => r.Id is "layer-aside" or "layer-broken" or "layer-bed");

    [Fact]
    public void A_surface_that_nobody_has_seen_leaves_the_spoil_open() => Assert.All(
        new[] { "ground.spoil-loose", "ground.spoil-mass", "ground.barrow-loads", "ground.dig-hours", "ground.surplus-bags" }, name => Assert.Null(Amount(name, With(("ground.surface", null)))));

    [Fact]
    public void Every_surface_has_its_row_and_every_row_names_layers_that_there_are() => Assert.All(
        Content().Options, option =>
        {
            var row = Surface.Answered(Figures, Home.Of(("ground.surface", option.Id)), asked: true)!.Row;

            Assert.All(new[] { "broken-is", "base-is", "breaks" }.Where(row.Cells.ContainsKey), cell => Assert.NotNull(Figures.Row(row.Cells[cell].Words)));
        });

    [Fact]
    public void A_deeper_hole_under_any_surface_never_means_less_spoil() => Gen.Select(Surfaces, Gen.Int[0, 300], Gen.Int[0, 300]).Sample(
        (surface, one, other) =>
        {
            decimal Out(int cm, string name) => Amount(name, With(("ground.surface", surface), ("operator.hole-depth", Metres(cm / 100m))))!.Amount;
            var (less, more) = (Math.Min(one, other), Math.Max(one, other));
            return Out(less, "ground.spoil-loose") <= Out(more, "ground.spoil-loose") && Out(less, "ground.spoil-mass") <= Out(more, "ground.spoil-mass");
        },
        iter: 300);

    [Fact]
    public void What_is_laid_aside_and_what_comes_out_are_all_that_is_dug() => Gen.Select(Surfaces, Gen.Int[0, 600]).Sample(
        (surface, cm) =>
        {
            var cut = Surface.Answered(Figures, Home.Of(("ground.surface", surface)), asked: true)!.Through(Figures, Quantity.Of(2, "m²"), Metres(cm / 100m), Soil.Find(Figures, "clay"))!;
            return Math.Abs(cut.Aside.Base + cut.Spoil.Sum(l => l.Volume.Base) - (2 * cm / 100m)) < 0.000001m;
        },
        iter: 500);

    [Fact]
    public void A_helper_never_makes_it_longer_and_alone_it_is_the_sum()
    {
        var (dig, barrow) = (Of("dig-hours")!.Amount, Of("barrow-hours")!.Amount);

        Assert.Equal(dig + barrow, Of("hours-alone")!.Amount);
        Assert.Equal(Math.Max(dig, barrow), Of("hours-with-helper")!.Amount);
    }

    [Fact]
    public void A_household_barrows_no_faster_than_it_digs() =>
        Assert.Equal(1.75m, decimal.Round(Of("barrow-hours")!.Amount / Of("barrow-hours", ("ground.who-digs", "contractor"))!.Amount, 6));

    [Theory]
    [InlineData(0.575, 0.312)]
    [InlineData(0.7, 0.437)]
    [InlineData(0.2, null)]
    public void The_tape_lies_over_the_duct_of_that_trench(double depth, double? tape) =>
        Assert.Equal((decimal?)tape, Of("tape-depth", ("ground.depth-given", Metres((decimal)depth)))?.Amount);

    private static decimal GroundWorkHours(string surface) => Amount("ground.dig-hours", With(("ground.surface", surface)))!.Amount;

    private static Question Content() => Support.Content.Guidance.Questions.Single(q => q.Name == "ground.surface");
}
