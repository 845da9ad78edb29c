using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Published.ElectricalCase;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 63 to 75: earthing and bonding sizes, rods, selectivity, fault current and the length of tails.</summary>
public sealed class ElectricalEarthingChecks
{
    [Fact, PublishedCheck(Subject, 63, Tables547, CheckMark.Read)]
    public void Protective_conductors_for_16_25_35_and_50_are_16_16_16_and_25() =>
        Assert.Equal([16, 16, 16, 25], new[] { 16m, 25, 35, 50 }.Select(s => ProtectiveSizes.ByTable(Figures, Size(s))?.Amount));

    [Fact, PublishedCheck(Subject, 64, Tables547, CheckMark.Read)]
    public void Bonds_under_combined_earthing_for_neutrals_of_25_to_120_are_10_to_35() =>
        Assert.Equal([10, 10, 16, 25, 35], new[] { 25m, 35, 50, 70, 120 }.Select(s => ProtectiveSizes.BondingCombined(Figures, Size(s))?.Amount));

    [Fact, PublishedCheck(Subject, 65, Pocket13, CheckMark.Read)]
    public void Bonds_under_separate_earthing_for_16_6_and_70_are_10_6_and_25() =>
        Assert.Equal([10, 6, 25], new[] { 16m, 6, 70 }.Select(s => ProtectiveSizes.BondingSeparate(Figures, Size(s))?.Amount));

    [Fact, PublishedCheck(Subject, 66, TestingAdvice, CheckMark.Read)]
    public void Rods_for_30_100_300_and_500_mA_may_have_1667_500_167_and_100_ohm() =>
        Assert.All(new[] { (0.03m, 1667m), (0.1m, 500), (0.3m, 167), (0.5m, 100) }, r => Near(r.Item2, Rod.GreatestResistance(Figures, Amps(r.Item1)), 1));

    [Fact, PublishedCheck(Subject, 67, OnSiteGuide78, CheckMark.Read)]
    public void A_rod_of_200_ohm_allows_a_device_of_0_25_A() => Near(0.25m, Rod.GreatestResidualCurrent(Figures, Ohms(200)), 0.001m);

    [Fact, PublishedCheck(Subject, 68, Bs7430, CheckMark.Memory)]
    public void A_rod_of_2_4_m_in_soil_of_100_comes_to_40_4_ohm() => Near(40.4m, Rod.Resistance(Figures, 100, Metres(2.4m), Quantity.Of(16, "mm")), 0.1m);

    [Fact, PublishedCheck(Subject, 69, OpenNeutralSum, CheckMark.Derived)]
    public void Electrodes_for_10_32_and_40_A_may_have_10_06_3_14_and_2_52_ohm() =>
        Assert.All(new[] { (10m, 10.06m), (32, 3.14m), (40, 2.52m) }, e => Near(e.Item2, OpenNeutral.GreatestElectrode(Figures, Amps(e.Item1)), 0.01m));

    [Fact, PublishedCheck(Subject, 70, OpenNeutralSum, CheckMark.Derived)]
    public void Electrodes_of_2_5_20_and_100_ohm_leave_69_7_178_6_and_217_5_V() =>
        Assert.All(new[] { (2.5m, 69.7m), (20, 178.6m), (100, 217.5m) }, e => Near(e.Item2, OpenNeutral.TouchVoltage(Figures, Ohms(e.Item1), Amps(40)), 0.1m));

    [Fact, PublishedCheck(Subject, 71, LawsonFuses, CheckMark.Read)]
    public void Fuses_are_selective_from_1_6_to_1()
    {
        (decimal Up, decimal Down, decimal Ratio, bool Holds)[] pairs = [(100, 63, 1.587m, false), (100, 60, 1.667m, true), (80, 50, 1.600m, true), (100, 80, 1.25m, false)];

        Assert.All(pairs, p => Near(p.Ratio, Selectivity.Ratio(Figures, Amps(p.Up), Amps(p.Down)), 0.001m));
        Assert.All(pairs, p => Assert.Equal(p.Holds, Selectivity.Holds(Figures, Amps(p.Up), Amps(p.Down))));
    }

    [Fact, PublishedCheck(Subject, 72, Ohm, CheckMark.Derived)]
    public void Loops_of_0_35_and_0_8_ohm_pass_657_and_287_5_A()
    {
        Near(657, FaultLoops.FaultCurrent(Figures, Ohms(0.35m)), 1);
        Near(287.5m, FaultLoops.FaultCurrent(Figures, Ohms(0.8m)), 1);
    }

    [Fact, PublishedCheck(Subject, 73, Ohm, CheckMark.Derived)]
    public void Behind_3_m_of_tails_16_kA_become_12_28()
    {
        var tails = FaultLoops.OfRun(Figures, new(CableFamily.Tails, Size(25)), new ProtectiveConductor.Beside(Size(25)), Metres(3), warm: false)!;

        Near(12_280, FaultLoops.FaultCurrentAfter(Figures, Figures.Quantity("declared-fault-current", "single")!, tails), 50);
    }

    [Fact, PublishedCheck(Subject, 74, TailsAdvice, CheckMark.Read)]
    public void Tails_of_2_0_2_5_3_0_and_3_1_m_go_from_not_needed_to_needed() => Assert.Equal(
        [SwitchFuse.NotNeeded, SwitchFuse.Ask, SwitchFuse.Ask, SwitchFuse.Needed],
        new[] { 2.0m, 2.5m, 3.0m, 3.1m }.Select(m => Tails.Need(Figures, Metres(m), operatorsLimit: null)));

    [Fact, PublishedCheck(Subject, 75, ArmourTalk, CheckMark.Derived)]
    public void Armour_as_good_as_10_of_copper_has_85() => Near(85.0m, Conductors.ArmourEqualTo(Figures, Size(10)), 0.5m);
}
