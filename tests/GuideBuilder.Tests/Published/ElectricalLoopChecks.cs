using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Published.ElectricalCase;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 45 to 62: earth-fault loops, the devices that open them, and the heat while they last.</summary>
public sealed class ElectricalLoopChecks
{
    private static readonly Cable Armoured25 = new(CableFamily.Armoured90, Size(25));
    private static readonly ProtectiveConductor Armour = new ProtectiveConductor.Armour(2);
    private static readonly ProtectiveConductor ThirdCore = new ProtectiveConductor.Core();

    private static EarthLoop? Loop(Cable cable, ProtectiveConductor protective, decimal metres, decimal outside = 0.35m) =>
        new EarthLoop.Measured(Ohms(outside)).Plus(Figures, FaultLoops.OfRun(Figures, cable, protective, Metres(metres))!);

    private static Quantity Fuse(decimal amps) => FaultLoops.GreatestForFuse(Figures, "bs-88-3", Amps(amps))!;

    private static decimal? Longest(ProtectiveConductor protective, decimal fuse, decimal outside = 0.35m) =>
        FaultLoops.LongestRun(Figures, Armoured25, protective, Ohms(outside), Fuse(fuse))?.Amount;

    [Fact, PublishedCheck(Subject, 45, LoopSum, CheckMark.Derived)]
    public void Armoured_25_over_12_m_makes_a_loop_of_0_4176_ohm() => Near(0.4176m, Loop(Armoured25, Armour, 12)!.Impedance, 0.0005m);

    [Fact, PublishedCheck(Subject, 46, Article100, CheckMark.Read)]
    public void That_loop_is_within_for_80_A_and_over_for_100()
    {
        var loop = Loop(Armoured25, Armour, 12);

        Assert.Equal(LimitVerdict.Within, EarthLoop.Judge(Figures, loop, Fuse(80)));
        Assert.Equal(LimitVerdict.Over, EarthLoop.Judge(Figures, loop, Fuse(100)));
    }

    // Under the limit, and by less than a tenth of it: the second reading of the figures has that called too close.
    [Fact, PublishedCheck(Subject, 47, LoopSum, CheckMark.Derived)]
    public void With_a_third_core_the_loop_is_0_3723_ohm_and_0_0077_under_0_38()
    {
        var loop = Loop(Armoured25, ThirdCore, 12)!;

        Near(0.3723m, loop.Impedance, 0.0005m);
        Near(0.0077m, Fuse(100).Amount - loop.Impedance.Amount, 0.0005m);
        Assert.Equal(LimitVerdict.TooCloseToCall, EarthLoop.Judge(Figures, loop, Fuse(100)));
    }

    [Fact, PublishedCheck(Subject, 48, LoopSum, CheckMark.Derived)]
    public void With_core_and_armour_together_it_is_0_3698_ohm() => Near(0.3698m, Loop(Armoured25, new ProtectiveConductor.CoreAndArmour(), 12)!.Impedance, 0.0005m);

    [Fact, PublishedCheck(Subject, 49, LoopSum, CheckMark.Derived)]
    public void The_longest_runs_on_armour_are_5_3_and_28_4_and_58_6_m()
    {
        Near(5.3m, Longest(Armour, 100), 0.1m);
        Near(28.4m, Longest(Armour, 80), 0.1m);
        Near(58.6m, Longest(Armour, 63), 0.1m);
    }

    [Fact, PublishedCheck(Subject, 50, LoopSum, CheckMark.Derived)]
    public void The_longest_run_on_a_third_core_is_16_1_m() => Near(16.1m, Longest(ThirdCore, 100), 0.1m);

    [Fact, PublishedCheck(Subject, 51, Article100, CheckMark.Derived)]
    public void At_the_declared_maximum_of_a_separate_earth_no_length_works()
    {
        Assert.All(new[] { 63m, 80, 100 }, fuse => Assert.True(Longest(Armour, fuse, 0.8m) < 0));
        Assert.All(new[] { 63m, 80, 100 }, fuse => Assert.Equal(LimitVerdict.Over, EarthLoop.Judge(Figures, new EarthLoop.DeclaredMaximum(Ohms(0.8m)), Fuse(fuse))));
    }

    [Fact, PublishedCheck(Subject, 52, Guide2008, CheckMark.Derived)]
    public void Breakers_of_32_and_63_A_allow_1_37_0_68_0_69_and_0_35_ohm() =>
        Assert.All(
            new[] { ("b", 32m, 1.37m), ("c", 32, 0.68m), ("b", 63, 0.69m), ("c", 63, 0.35m) },
            b => Near(b.Item3, FaultLoops.GreatestForBreaker(Figures, b.Item1, Amps(b.Item2)), 0.005m));

    [Fact, PublishedCheck(Subject, 53, FuseStandards, CheckMark.Read)]
    public void A_fuse_that_needs_113_A_allows_2_04_ohm_or_1_93_at_low_voltage()
    {
        Near(2.04m, FaultLoops.GreatestForCurrent(Figures, Amps(113), withLeastVoltage: false), 0.01m);
        Near(1.93m, FaultLoops.GreatestForCurrent(Figures, Amps(113)), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 54, EightyPerCent, CheckMark.Read)]
    public void Of_0_91_ohm_0_728_may_be_measured() => Near(0.728m, FaultLoops.GreatestMeasured(Figures, Ohms(0.91m)), 0.001m);

    // The book prints 0.49: it cuts where we round.
    [Fact, PublishedCheck(Subject, 55, Textbook, CheckMark.Read)]
    public void Ninety_amps_for_0_4_s_need_0_495_square_millimetres() => Near(0.495m, Adiabatic.LeastSize(Figures, Amps(90), 0.4m, 115), 0.01m);

    [Fact, PublishedCheck(Subject, 56, Textbook, CheckMark.Read)]
    public void A_loop_of_1_15_ohm_for_0_4_s_needs_1_10()
    {
        var current = FaultLoops.FaultCurrent(Figures, Ohms(1.15m))!;

        Near(200, current, 0.01m);
        Near(1.10m, Adiabatic.LeastSize(Figures, current, 0.4m, 115), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 57, ArmourTalk, CheckMark.Read)]
    public void Armour_under_1966_A_for_0_1_s_needs_13_5() => Near(13.5m, Adiabatic.LeastSize(Figures, Amps(1966), 0.1m, Adiabatic.K(Figures, "k-steel-armour", 90)!.Value), 0.05m);

    [Fact, PublishedCheck(Subject, 58, AdiabaticTalk, CheckMark.Read)]
    public void Six_hundred_and_fifty_amps_for_0_01_s_need_0_565() => Near(0.565m, Adiabatic.LeastSize(Figures, Amps(650), 0.01m, 115), 0.005m);

    [Fact, PublishedCheck(Subject, 59, AdiabaticSum, CheckMark.Derived)]
    public void The_earthing_conductor_behind_an_old_100_A_fuse_needs_9_99_or_12_42_and_is_16_by_the_table()
    {
        var current = FaultLoops.FaultCurrent(Figures, Figures.Quantity("old-fuse-bs-1361-100", "loop-5-seconds")!)!;
        var separate = Adiabatic.LeastSize(Figures, current, 5, Adiabatic.K(Figures, "k-copper-separate", 70)!.Value);
        var bunched = Adiabatic.LeastSize(Figures, current, 5, Adiabatic.K(Figures, "k-copper-core", 70)!.Value);

        Near(638.9m, current, 0.1m);
        Near(9.99m, separate, 0.02m);
        Near(12.42m, bunched, 0.02m);
        Assert.Equal(16, Conductors.StandardSize(Figures, bunched!)!.Amount);
        Assert.Equal(16, ProtectiveSizes.ByTable(Figures, Size(25))!.Amount);
    }

    [Fact, PublishedCheck(Subject, 60, AdiabaticSum, CheckMark.Derived)]
    public void The_armour_of_case_45_needs_26_8_of_its_42()
    {
        var current = FaultLoops.FaultCurrent(Figures, Loop(Armoured25, Armour, 12)!.Impedance)!;
        var least = Adiabatic.LeastSize(Figures, current, 5, Adiabatic.K(Figures, "k-steel-armour", 90)!.Value);

        Near(550.8m, current, 0.5m);
        Near(26.8m, least, 0.1m);
        Assert.Equal(LimitVerdict.Within, Limits.AtMost(Figures, least, Conductors.ArmourArea(Figures, Size(25), 2)));
    }

    [Fact, PublishedCheck(Subject, 61, AdiabaticSum, CheckMark.Derived)]
    public void Armour_by_the_table_has_enough_for_6_and_35_only()
    {
        decimal[] sizes = [6, 10, 16, 25, 35, 50];
        var needed = sizes.Select(s => ProtectiveSizes.ByTableOf(Figures, Size(s), "k-copper-line", "k-steel-armour", 90)!.Amount).ToArray();
        var there = sizes.Select(s => Conductors.ArmourArea(Figures, Size(s), 2)!.Amount).ToArray();

        Assert.All(needed.Zip([18.7m, 31.1m, 49.7m, 49.7m, 49.7m, 77.7m]), pair => Near(pair.Second, pair.First, 0.1m));
        Assert.Equal([22, 26, 42, 42, 60, 68], there);
        Assert.Equal([true, false, false, false, true, false], needed.Zip(there).Select(pair => pair.First <= pair.Second));
    }

    [Fact, PublishedCheck(Subject, 62, AdiabaticSum, CheckMark.Derived)]
    public void Flat_16_over_10_m_behind_80_A_needs_11_2_and_has_6()
    {
        var cable = new Cable(CableFamily.FlatTwinAndEarth, Size(16));
        var loop = Loop(cable, new ProtectiveConductor.InFlatCable(), 10)!;
        var current = FaultLoops.FaultCurrent(Figures, loop.Impedance)!;
        var (there, row) = new ProtectiveConductor.InFlatCable().Heated(Figures, cable);
        var least = Adiabatic.LeastSize(Figures, current, 5, Adiabatic.K(Figures, row, 70)!.Value);

        Near(0.4008m, loop.Impedance, 0.0005m);
        Near(573.9m, current, 0.2m);
        Near(11.2m, least, 0.1m);
        Assert.Equal(LimitVerdict.Over, Limits.AtMost(Figures, least, there));
    }
}
