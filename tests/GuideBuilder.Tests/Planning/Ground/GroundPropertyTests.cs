using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using static GuideBuilder.Tests.Planning.Ground.Home;

namespace GuideBuilder.Tests.Planning.Ground;

public sealed class GroundPropertyTests
{
    private static readonly Gen<decimal> Covers = Gen.Int[0, 300].Select(cm => cm / 100m);
    private static readonly Gen<decimal> Cables = Gen.Int[5, 200].Select(mm => mm / 1000m);
    private static readonly Gen<decimal> SideLengths = Gen.Int[30, 1000].Select(cm => cm / 100m);
    private static readonly Gen<decimal> Depths = Gen.Int[0, 600].Select(cm => cm / 100m);
    private static readonly Gen<Soil?> Soils = Gen.Int[-1, Figures.Group("soil-").Count() - 1].Select(i => i < 0 ? null : new Soil(Figures.Group("soil-").ElementAt(i)));

    [Fact]
    public void More_cover_never_means_less_spoil() => Gen.Select(Covers, Covers, Cables, SideLengths, Soils).Sample(
        (one, other, cable, side, soil) =>
        {
            Quantity? Grow(decimal cover, Func<Layer, Quantity?> measure) =>
                soil is null ? Quantity.Number(0) : measure(new(soil, JointHole.Volume(Figures, Metres(side), Metres(side), JointHole.Depth(Figures, Metres(cover), Metres(cable), Metres(0.2m)))!));
            var (less, more) = (Math.Min(one, other), Math.Max(one, other));
            return Grow(less, l => Spoil.Loose(Figures, l))!.Amount <= Grow(more, l => Spoil.Loose(Figures, l))!.Amount
                && Grow(less, l => Spoil.Mass(Figures, l))!.Amount <= Grow(more, l => Spoil.Mass(Figures, l))!.Amount;
        },
        iter: 2000);

    [Fact]
    public void Wet_or_unknown_soil_is_never_steeper() => Gen.Select(Soils, Depths).Sample(
        (soil, depth) =>
        {
            decimal Back(Soil? s, bool? wet) => Sides.Slope(Figures, s, wet)!.Amount;
            SideAdvice Advice(Soil? s, bool? wet) => Sides.For(Figures, Metres(depth), s, wet);
            return Back(soil, true) >= Back(soil, false) && Back(soil, null) >= Back(soil, false) && Back(null, false) >= Back(soil, false)
                && Advice(soil, true) >= Advice(soil, false) && Advice(soil, null) >= Advice(soil, false) && Advice(null, false) >= Advice(soil, false);
        },
        iter: 2000);

    [Fact]
    public void A_deeper_hole_never_asks_for_less() => Gen.Select(Depths, Depths, Soils).Sample(
        (one, other, soil) => Sides.For(Figures, Metres(Math.Min(one, other)), soil, null) <= Sides.For(Figures, Metres(Math.Max(one, other)), soil, null),
        iter: 2000);

    [Fact]
    public void A_sloped_hole_is_the_mean_of_its_bottom_middle_and_top() => Gen.Select(SideLengths, SideLengths, Depths, Gen.Int[0, 30]).Sample(
        (a, b, depth, tenths) =>
        {
            var slope = tenths / 10m;
            decimal Area(decimal at) => (a + (2 * slope * at)) * (b + (2 * slope * at));
            var simpson = depth / 6 * (Area(0) + (4 * Area(depth / 2)) + Area(depth));
            var found = JointHole.SlopedVolume(Figures, Metres(a), Metres(b), Metres(depth), Quantity.Number(slope))!.Amount;
            return Math.Abs(found - simpson) < 0.000001m && found >= JointHole.Volume(Figures, Metres(a), Metres(b), Metres(depth))!.Amount;
        },
        iter: 2000);

    [Fact]
    public void Layers_add_up_to_the_whole() => Gen.Select(Soils, Gen.Int[1, 500], Gen.Int[1, 500]).Sample(
        (soil, one, other) =>
        {
            if (soil is null)
            {
                return true;
            }

            Layer Of(int litres) => new(soil, Quantity.Of(litres / 1000m, "m³"));
            return Math.Abs(Spoil.Mass(Figures, Of(one), Of(other))!.Amount - Spoil.Mass(Figures, Of(one + other))!.Amount) < 0.00001m;
        },
        iter: 1000);

    [Fact]
    public void Containers_always_hold_what_they_are_counted_for() => Gen.Select(Gen.Int[0, 20000], Gen.Int[0, 40000]).Sample(
        (litres, kilograms) =>
        {
            var (loose, mass) = (Quantity.Of(litres / 1000m, "m³"), Quantity.Of(kilograms, "kg"));
            var barrows = Containers.Barrows(Figures, loose, mass)!.Amount;
            return barrows * 0.06m >= loose.Amount && barrows * 85 >= mass.Amount && (barrows == 0 || (barrows - 1) * 0.06m < loose.Amount || (barrows - 1) * 85 < mass.Amount);
        },
        iter: 2000);
}
