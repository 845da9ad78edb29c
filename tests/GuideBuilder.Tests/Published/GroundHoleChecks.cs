using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Published.GroundCase;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 1 to 11, 41, 42 and 52 to 59: sizes, slopes, the trench, heaps and clearances.</summary>
public sealed class GroundHoleChecks
{
    private static void HoleIs(decimal cover, decimal cable, decimal depth, decimal volume)
    {
        Assert.Equal(depth, DepthOf(cover, cable).Amount);
        Near(volume, VolumeOf(DepthOf(cover, cable)), 0.1m);
    }

    private static void SlopedIs(Quantity depth, decimal slope, decimal top, decimal volume)
    {
        Near(top, JointHole.Top(Figures, Square, depth, Number(slope)), 0.1m);
        Near(volume, JointHole.SlopedVolume(Figures, Square, Square, depth, Number(slope)), 0.2m);
    }

    private static Quantity? TrenchOf(decimal cover, decimal duct) => Trench.Depth(Figures, Metres(cover), Metres(duct), Figures.Quantity("bed", "thickness"));

    [Fact, PublishedCheck(Subject, 1, Geometry, CheckMark.Derived)]
    public void Cover_450_mm_over_25_mm_makes_0_675_m_and_0_972_cubic_metres() => HoleIs(0.45m, 0.025m, 0.675m, 0.972m);

    [Fact, PublishedCheck(Subject, 2, Geometry, CheckMark.Derived)]
    public void Cover_600_mm_over_50_mm_makes_0_85_m_and_1_224_cubic_metres() => HoleIs(0.6m, 0.05m, 0.85m, 1.224m);

    [Fact, PublishedCheck(Subject, 3, Geometry, CheckMark.Derived)]
    public void Cover_600_mm_over_25_mm_makes_0_825_m_and_1_188_cubic_metres() => HoleIs(0.6m, 0.025m, 0.825m, 1.188m);

    [Fact, PublishedCheck(Subject, 4, Geometry, CheckMark.Derived)]
    public void Cover_1_m_makes_a_hole_that_nobody_enters_without_a_firms_support()
    {
        HoleIs(1, 0.025m, 1.225m, 1.764m);
        Assert.Equal(SideAdvice.FirmWithSupport, Sides.For(Figures, DepthOf(1, 0.025m), Named("clay"), wet: false));
    }

    [Fact, PublishedCheck(Subject, 5, Geometry, CheckMark.Derived)]
    public void A_hole_reaches_1_2_m_at_a_cover_of_0_975_m() =>
        Assert.Equal(0.975m, JointHole.CoverFor(Figures, Figures.Quantity("depth-stop", "depth"), Metres(0.025m), Metres(0.2m))!.Amount);

    [Fact, PublishedCheck(Subject, 6, Slopes, CheckMark.Derived)]
    public void At_0_75_to_1_the_second_hole_holds_2_985() => SlopedIs(SecondDepth, 0.75m, 2.475m, 2.985m);

    [Fact, PublishedCheck(Subject, 7, Geometry, CheckMark.Derived)]
    public void At_1_to_1_the_second_hole_holds_3_777() => SlopedIs(SecondDepth, 1, 2.9m, 3.777m);

    [Fact, PublishedCheck(Subject, 8, Geometry, CheckMark.Derived)]
    public void At_1_5_to_1_the_second_hole_holds_5_667() => SlopedIs(SecondDepth, 1.5m, 3.75m, 5.667m);

    [Fact, PublishedCheck(Subject, 9, Geometry, CheckMark.Derived)]
    public void At_1_to_1_the_first_hole_holds_2_476() => SlopedIs(FirstDepth, 1, 2.55m, 2.476m);

    [Fact, PublishedCheck(Subject, 10, Geometry, CheckMark.Derived)]
    public void A_deep_hole_at_1_5_to_1_holds_12_68_which_no_garden_has() => SlopedIs(DepthOf(1, 0.025m), 1.5m, 4.875m, 12.68m);

    [Fact, PublishedCheck(Subject, 11, Geometry, CheckMark.Derived)]
    public void The_slopes_are_53_45_and_34_degrees()
    {
        decimal[] angles = [.. new[] { 0.75m, 1, 1.5m }.Select(s => decimal.Round(Sides.Angle(Figures, Number(s))!.Amount, 1))];

        Assert.Equal([53.1m, 45.0m, 33.7m], angles);
        Near(1.5m, Sides.OfAngle(Figures, Sides.Angle(Figures, Number(1.5m))), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 41, TrenchRule, CheckMark.Read)]
    public void Cover_450_duct_50_and_bed_75_make_a_trench_of_575_mm() => Assert.Equal(0.575m, TrenchOf(0.45m, 0.05m)!.Amount);

    [Fact, PublishedCheck(Subject, 42, TrenchRule, CheckMark.Read)]
    public void Other_covers_and_ducts_make_563_725_and_1125_mm() =>
        Assert.Equal([0.563m, 0.725m, 1.125m], new[] { TrenchOf(0.45m, 0.038m), TrenchOf(0.6m, 0.05m), TrenchOf(1, 0.05m) }.Select(q => q!.Amount));

    [Fact, PublishedCheck(Subject, 52, Geometry, CheckMark.Derived)]
    public void A_ridge_of_1_312_cubic_metres_2_m_long_is_1_94_m_wide_and_0_68_high()
    {
        var heap = Heap.Ridge(Figures, Cubic(1.312m), Metres(2), Number(35));

        Near(1.94m, heap!.Width, 1);
        Near(0.68m, heap.Height, 1);
    }

    [Fact, PublishedCheck(Subject, 53, Geometry, CheckMark.Derived)]
    public void A_cone_of_1_312_cubic_metres_has_a_radius_of_1_21_m_and_is_0_85_high()
    {
        var heap = Heap.Cone(Figures, Cubic(1.312m), Number(35));

        Near(1.21m, heap!.Width, 1);
        Near(0.85m, heap.Height, 1);
    }

    [Fact, PublishedCheck(Subject, 54, Trees, CheckMark.Read)]
    public void Round_a_trunk_of_0_9_m_only_hands_dig_within_3_6_m_and_nobody_within_1()
    {
        Assert.Equal(3.6m, Clearances.HandDigging(Figures, Metres(0.9m))!.Amount);
        Assert.Equal(1, Figures.In("trees", "no-digging", "m"));
    }

    [Fact, PublishedCheck(Subject, 55, BendHabit, CheckMark.Memory)]
    public void A_cable_of_25_mm_bends_no_tighter_than_200_and_300_mm() =>
        Assert.Equal((0.2m, 0.3m), (Clearances.Bend(Figures, "bend-plastic", Metres(0.025m))!.Amount, Clearances.Bend(Figures, "bend-lead", Metres(0.025m))!.Amount));

    [Fact, PublishedCheck(Subject, 56, FootingHabit, CheckMark.Memory)]
    public void A_hole_of_0_675_m_stays_0_225_m_from_a_footing_0_45_m_deep() =>
        Assert.Equal(0.225m, Clearances.FromFooting(Figures, FirstDepth, Metres(0.45m))!.Amount);

    [Fact, PublishedCheck(Subject, 57, SmallOpening, CheckMark.Read)]
    public void The_usual_hole_is_a_small_opening_in_any_street() => Assert.True(Clearances.IsSmallOpening(Figures, JointHole.Surface(Figures, Square, Square)));

    [Fact, PublishedCheck(Subject, 58, Geometry, CheckMark.Derived)]
    public void A_barrier_0_6_m_back_is_9_6_m_long() => Assert.Equal(9.6m, Guarding.Barrier(Figures, Square, Square)!.Amount);

    [Fact, PublishedCheck(Subject, 59, Geometry, CheckMark.Derived)]
    public void Ten_millimetres_of_rain_leave_14_4_litres() =>
        Assert.Equal(0.0144m, Guarding.RainWater(Figures, JointHole.Surface(Figures, Square, Square), Quantity.Of(10, "mm"))!.Amount);
}
