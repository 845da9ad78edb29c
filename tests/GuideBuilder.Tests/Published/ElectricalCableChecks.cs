using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Planning.Electrical.LayingMethod;
using static GuideBuilder.Tests.Published.ElectricalCase;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 24 to 44: current and voltage along cables, and the resistance of conductors.</summary>
public sealed class ElectricalCableChecks
{
    private static SubMainCase Buried(CableFamily family, decimal fuse) =>
        new(family, D, Phases.One, Amps(fuse), "bs-88-3", Amps(fuse), Metres(10), new ProtectiveConductor.Armour(2), null, []);

    private static (decimal? Size, decimal? Rating) ByCurrent(CableFamily family, decimal fuse)
    {
        var chosen = SubMain.ByCurrent(Figures, Buried(family, fuse));
        return (chosen?.Cable.Size.Amount, chosen?.Rating?.Amount);
    }

    private static decimal? Rated(CableFamily family, decimal size, LayingMethod method) => new Cable(family, Size(size)).Rating(Figures, method, Phases.One)?.Amount;

    private static Quantity? Lost(decimal perMetre, decimal amps, decimal metres) => VoltageDrop.Of(Figures, PerMetre(perMetre), Amps(amps), Metres(metres));

    private static Quantity? Run(decimal size, decimal protective, decimal metres) =>
        FaultLoops.OfRun(Figures, new(CableFamily.FlatTwinAndEarth, Size(size)), new ProtectiveConductor.Beside(Size(protective)), Metres(metres), warm: false);

    [Fact, PublishedCheck(Subject, 24, Textbook, CheckMark.Read)]
    public void A_32_A_device_under_0_94_needs_34_04_A() => Near(34.04m, RatingFactors.NeededRating(Figures, Amps(32), RatingFactors.Air(Figures, 70, 35)), 0.01m);

    [Fact, PublishedCheck(Subject, 25, Factors, CheckMark.Derived)]
    public void An_80_A_device_at_40_degrees_needs_91_95_A() => Near(91.95m, RatingFactors.NeededRating(Figures, Amps(80), RatingFactors.Air(Figures, 70, 40)), 0.01m);

    [Fact, PublishedCheck(Subject, 26, Table4D1A, CheckMark.Read)]
    public void Tails_of_25_carry_100_A_clipped_and_in_conduit_but_not_in_an_insulated_wall()
    {
        Assert.Equal([true, true, false], new[] { C, B, A }.Select(m => Tails.Carry(Figures, Size(25), m, Phases.One, Amps(100))));
        Assert.Equal([114, 101, 80], new[] { C, B, A }.Select(m => Rated(CableFamily.Tails, 25, m)));
    }

    [Fact, PublishedCheck(Subject, 27, Table4D1A, CheckMark.Read)]
    public void Tails_of_16_carry_80_A_clipped_and_not_100()
    {
        Assert.False(Tails.Carry(Figures, Size(16), C, Phases.One, Amps(100)));
        Assert.True(Tails.Carry(Figures, Size(16), C, Phases.One, Amps(80)));
        Assert.Equal(87, Rated(CableFamily.Tails, 16, C));
    }

    [Fact, PublishedCheck(Subject, 28, Table4E4A, CheckMark.Read)]
    public void Buried_for_80_A_at_90_degrees_16_does() => Assert.Equal((16, 91), ByCurrent(CableFamily.Armoured90, 80));

    [Fact, PublishedCheck(Subject, 29, Table4D4A, CheckMark.Memory)]
    public void Buried_for_80_A_at_70_degrees_25_does() => Assert.Equal((25, 99), ByCurrent(CableFamily.Armoured70, 80));

    [Fact, PublishedCheck(Subject, 30, Table4D4A, CheckMark.Memory)]
    public void Buried_for_100_A_35_does_at_70_degrees_and_25_at_90()
    {
        Assert.Equal((35, 119), ByCurrent(CableFamily.Armoured70, 100));
        Assert.Equal((25, 116), ByCurrent(CableFamily.Armoured90, 100));
    }

    [Fact, PublishedCheck(Subject, 31, Table4D5, CheckMark.Memory)]
    public void Flat_16_carries_80_A_clipped_only()
    {
        LayingMethod[] methods = [C, StudTouching, CeilingThicklyInsulated];

        Assert.Equal([85, 63, 46], methods.Select(m => Rated(CableFamily.FlatTwinAndEarth, 16, m)));
        Assert.Equal([true, false, false], methods.Select(m => Rated(CableFamily.FlatTwinAndEarth, 16, m) >= 80));
    }

    [Fact, PublishedCheck(Subject, 32, Drop, CheckMark.Read)]
    public void Eleven_millivolts_at_30_A_over_20_m_lose_6_6_V() => Near(6.60m, Lost(11, 30, 20), 0.01m);

    [Fact, PublishedCheck(Subject, 33, Drop, CheckMark.Read)]
    public void Six_square_millimetres_at_45_A_over_40_m_lose_13_14_V_which_is_over()
    {
        var drop = Lost(7.3m, 45, 40);

        Near(13.14m, drop, 0.01m);
        Assert.Equal(LimitVerdict.Over, Limits.AtMost(Figures, drop, VoltageDrop.Limit(Figures, lighting: false, Phases.One)));
    }

    [Fact, PublishedCheck(Subject, 34, Drop, CheckMark.Read)]
    public void Ten_square_millimetres_at_45_A_over_40_m_lose_7_92_V_which_is_within()
    {
        var drop = Lost(4.4m, 45, 40);

        Near(7.92m, drop, 0.01m);
        Assert.Equal(LimitVerdict.Within, Limits.AtMost(Figures, drop, VoltageDrop.Limit(Figures, lighting: false, Phases.One)));
    }

    [Fact, PublishedCheck(Subject, 35, Drop, CheckMark.Read)]
    public void Twenty_nine_millivolts_at_16_A_over_10_m_lose_4_64_V() => Near(4.64m, Lost(29, 16, 10), 0.01m);

    [Fact, PublishedCheck(Subject, 36, Table4D1A, CheckMark.Derived)]
    public void Tails_of_25_at_100_A_over_3_m_lose_0_525_V()
    {
        var drop = VoltageDrop.Of(Figures, new Cable(CableFamily.Tails, Size(25)).Drop(Figures, Phases.One)!, Amps(100), Metres(3))!;

        Near(0.525m, drop, 0.001m);
        Near(0.228m, VoltageDrop.Share(Figures, drop, Phases.One), 0.001m);
    }

    [Fact, PublishedCheck(Subject, 37, Table4E4A, CheckMark.Derived)]
    public void Armoured_25_at_80_A_over_20_m_loses_3_04_V_and_leaves_3_86()
    {
        var drop = VoltageDrop.Of(Figures, new Cable(CableFamily.Armoured90, Size(25)).Drop(Figures, Phases.One)!, Amps(80), Metres(20))!;

        Near(3.04m, drop, 0.01m);
        Near(1.322m, VoltageDrop.Share(Figures, drop, Phases.One), 0.01m);
        Near(3.86m, VoltageDrop.Left(VoltageDrop.Limit(Figures, lighting: true, Phases.One)!, drop), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 38, Table4E4A, CheckMark.Derived)]
    public void Armoured_16_on_three_phases_at_63_A_over_30_m_loses_4_725_V()
    {
        var drop = VoltageDrop.Of(Figures, new Cable(CableFamily.Armoured90, Size(16)).Drop(Figures, Phases.Three)!, Amps(63), Metres(30))!;

        Near(4.725m, drop, 0.001m);
        Near(1.181m, VoltageDrop.Share(Figures, drop, Phases.Three), 0.001m);
    }

    [Fact, PublishedCheck(Subject, 39, Iec60228, CheckMark.Derived)]
    public void The_resistance_of_25_gives_1_854_and_1_605_as_the_table_does()
    {
        Near(1.854m, VoltageDrop.Expected(Figures, Size(25), Phases.One, 90), 0.001m);
        Near(1.605m, VoltageDrop.Expected(Figures, Size(25), Phases.Three, 90), 0.001m);
        Near(1.85m, VoltageDrop.Expected(Figures, Size(25), Phases.One, 90), 0.0185m);
        Near(1.60m, VoltageDrop.Expected(Figures, Size(25), Phases.Three, 90), 0.016m);
    }

    [Fact, PublishedCheck(Subject, 40, Cooler, CheckMark.Memory)]
    public void A_load_of_63_A_on_146_takes_the_drop_down_to_2_03_V()
    {
        var factor = VoltageDrop.CoolerFactor(Figures, Amps(63), Amps(146), 90);

        Near(0.8474m, factor, 0.001m);
        Near(2.03m, Lost(1.9m, 63, 20)!.Amount * factor, 0.01m);
    }

    [Fact, PublishedCheck(Subject, 41, TestNotes, CheckMark.Read)]
    public void R1_and_R2_of_2_5_and_1_5_over_22_m_are_0_429_ohm() => Near(0.429m, Run(2.5m, 1.5m, 22), 0.001m);

    [Fact, PublishedCheck(Subject, 42, Guide2008, CheckMark.Read)]
    public void R1_and_R2_of_16_and_6_over_50_m_are_0_2115_ohm() => Near(0.2115m, Run(16, 6, 50), 0.001m);

    [Fact, PublishedCheck(Subject, 43, Guide2008, CheckMark.Read)]
    public void R1_and_R2_of_10_and_4_and_of_6_and_2_5_over_50_m_are_0_322_and_0_5245_ohm()
    {
        Near(0.322m, Run(10, 4, 50), 0.005m);
        Near(0.5245m, Run(6, 2.5m, 50), 0.005m);
    }

    [Fact, PublishedCheck(Subject, 44, Iec60228, CheckMark.Read)]
    public void Warm_copper_resists_1_2_and_1_28_times_as_much()
    {
        Near(1 / 0.833m, Conductors.WarmCopper(Figures, 70), 0.001m);
        Near(1 / 0.781m, Conductors.WarmCopper(Figures, 90), 0.001m);
    }
}
