using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Published.GroundCase;
using Work = GuideBuilder.Planning.Ground.Labour;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 32 to 40 and 43 to 51: hours, sand, layers and what is left over.</summary>
public sealed class GroundWorkChecks
{
    private static readonly Quantity Bed = Figures.Quantity("bed", "thickness")!;

    private static readonly Quantity DiggingClay = Work.DigHours(Figures, FirstVolume, Named("clay"), Dig.Pit, FirstDepth)!;

    private static Quantity TrenchOf(decimal length, decimal depth) => Trench.Volume(Figures, Metres(length), Metres(0.3m), Metres(depth))!;

    private static Quantity? SandOf(decimal length, decimal duct) => Sand.InTrench(Figures, Metres(length), Metres(0.3m), Bed, Metres(duct), Bed);

    private static Quantity? SandInHole(decimal above) => Sand.InHole(Figures, Square, Square, Metres(0.2m), Metres(0.025m), Metres(above));

    private static Quantity Less(Quantity whole, params Quantity?[] parts) => whole with { Amount = whole.Amount - parts.Sum(p => p!.Amount) };

    private static Quantity Plus(params Quantity?[] parts) => parts[0]! with { Amount = parts.Sum(p => p!.Amount) };

    [Fact, PublishedCheck(Subject, 32, GroundCase.Labour, CheckMark.Derived)]
    public void Clay_takes_2_78_hours() => Near(2.78m, DiggingClay, 1);

    [Fact, PublishedCheck(Subject, 33, GroundCase.Labour, CheckMark.Derived)]
    public void Loose_soil_takes_1_94_hours() => Near(1.94m, Work.DigHours(Figures, FirstVolume, Named("loose"), Dig.Pit, FirstDepth), 1);

    [Fact, PublishedCheck(Subject, 34, GroundCase.Labour, CheckMark.Derived)]
    public void Boulder_clay_takes_4_37_hours() => Near(4.37m, Work.DigHours(Figures, VolumeOf(SecondDepth), Named("stony"), Dig.Pit, SecondDepth), 1);

    [Fact, PublishedCheck(Subject, 35, LearningPack, CheckMark.Derived)]
    public void A_third_table_gives_2_33_hours_and_up_to_3_55_in_sand()
    {
        var hours = Work.AtRate(Figures, FirstVolume, Hours(2.4m));

        Near(2.33m, hours, 1);
        Near(2.92m, Work.Times(Figures, hours, Number(1.25m)), 1);
        Near(3.55m, Work.Times(Figures, hours, Number(1.52m)), 1);
    }

    [Fact, PublishedCheck(Subject, 36, LearningPack, CheckMark.Derived)]
    public void Below_a_metre_the_third_table_asks_more()
    {
        var bands = new[] { (1m, 2.4m), (0.225m, 5.2m) }.Select(b => Work.AtRate(Figures, VolumeOf(Metres(b.Item1)), Hours(b.Item2))).ToArray();

        Near(5.14m, Plus(bands), 1);
    }

    [Fact, PublishedCheck(Subject, 37, GroundCase.Labour, CheckMark.Derived)]
    public void Digging_barrowing_and_filling_take_4_45_hours_and_a_household_7_78()
    {
        var all = Plus(DiggingClay, Work.BarrowHours(Figures, Loose("clay", FirstVolume), Metres(15)), Work.FillHours(Figures, FirstVolume, Named("clay")));

        Near(4.45m, all, 1);
        Near(7.78m, Work.Times(Figures, all, Figures.Quantity("person-household", "factor")), 1);
    }

    [Fact, PublishedCheck(Subject, 38, LabourFactors, CheckMark.Derived)]
    public void A_second_table_gives_7_24_hours_for_heavy_soil() =>
        Near(7.24m, Plus([.. new[] { 3.3m, 1.9m, 1.25m, 1m }.Select(r => Work.AtRate(Figures, FirstVolume, Hours(r)))]), 1);

    [Fact, PublishedCheck(Subject, 39, GroundCase.Labour, CheckMark.Derived)]
    public void A_trench_of_5_m_in_clay_is_0_795_cubic_metres_and_1_73_hours()
    {
        var trench = TrenchOf(5, 0.53m);

        Near(0.795m, trench, 1);
        Near(1.73m, Work.DigHours(Figures, trench, Named("clay"), Dig.Trench, Metres(0.53m)), 1);
    }

    [Fact, PublishedCheck(Subject, 40, GroundCase.Labour, CheckMark.Derived)]
    public void A_trench_of_10_m_in_firm_soil_is_1_725_cubic_metres_and_3_03_hours()
    {
        var trench = TrenchOf(10, 0.575m);

        Near(1.725m, trench, 1);
        Near(3.03m, Work.DigHours(Figures, trench, Named("topsoil"), Dig.Trench, Metres(0.575m)), 1);
    }

    [Fact, PublishedCheck(Subject, 43, Tabled, CheckMark.Derived)]
    public void Ten_metres_of_50_mm_duct_take_0_58_of_sand_and_0_685_on_order()
    {
        var order = Sand.ToOrder(Figures, SandOf(10, 0.05m));

        Near(0.580m, SandOf(10, 0.05m), 1);
        Near(0.685m, order, 1);
        Near(1100, Sand.Mass(Figures, order), 1);
    }

    [Fact, PublishedCheck(Subject, 44, Tabled, CheckMark.Derived)]
    public void Five_metres_of_38_mm_duct_take_0_276_and_0_326_on_order()
    {
        Near(0.276m, SandOf(5, 0.038m), 1);
        Near(0.326m, Sand.ToOrder(Figures, SandOf(5, 0.038m)), 1);
    }

    [Fact, PublishedCheck(Subject, 45, Geometry, CheckMark.Derived)]
    public void Sand_to_75_mm_over_the_cable_is_0_431_and_leaves_0_54_above()
    {
        Assert.Equal(0.3m, Sand.HeightInHole(Figures, Metres(0.2m), Metres(0.025m), Bed)!.Amount);
        Near(0.431m, SandInHole(0.075m), 1);
        Near(0.509m, Sand.ToOrder(Figures, SandInHole(0.075m)), 1);
        Near(0.540m, VolumeOf(Less(FirstDepth, Metres(0.3m))), 1);
    }

    [Fact, PublishedCheck(Subject, 46, Geometry, CheckMark.Derived)]
    public void Sand_to_250_mm_over_the_cable_is_0_683_and_leaves_0_288_above()
    {
        Assert.Equal(0.475m, Sand.HeightInHole(Figures, Metres(0.2m), Metres(0.025m), Metres(0.25m))!.Amount);
        Near(0.683m, SandInHole(0.25m), 1);
        Near(0.288m, VolumeOf(Less(FirstDepth, Metres(0.475m))), 1);
    }

    [Fact, PublishedCheck(Subject, 47, Geometry, CheckMark.Derived)]
    public void A_height_of_375_mm_takes_4_layers_by_hand_and_3_with_a_rammer() =>
        Assert.Equal((4, 3), (Filling.Layers(Figures, Metres(0.375m), Figures.Quantity("layers", "by-hand"))!.Amount, Filling.Layers(Figures, Metres(0.375m), Figures.Quantity("layers", "with-rammer"))!.Amount));

    [Fact, PublishedCheck(Subject, 48, Tabled, CheckMark.Derived)]
    public void Sand_0_3_m_deep_leaves_0_432_over()
    {
        var left = Spoil.Surplus(Figures, FirstVolume, Less(FirstVolume, VolumeOf(Metres(0.3m))), Number(1))!;

        Near(0.432m, left, 1);
        Near(0.583m, Loose("clay", left), 1);
        Near(799, Mass("clay", left), 1);
    }

    [Fact, PublishedCheck(Subject, 49, Tabled, CheckMark.Derived)]
    public void A_made_up_footway_leaves_0_662_over()
    {
        var footway = Plus(Figures.Quantity("made-up-footway", "base")!.In(Unit.Of("m")), Figures.Quantity("made-up-footway", "surface")!.In(Unit.Of("m")));
        var left = Spoil.Surplus(Figures, FirstVolume, Less(FirstVolume, VolumeOf(Metres(0.3m)), VolumeOf(footway)), Number(1))!;

        Near(0.662m, left, 1);
        Near(0.894m, Loose("clay", left), 1);
        Near(1225, Mass("clay", left), 1);
    }

    [Fact, PublishedCheck(Subject, 50, Tabled, CheckMark.Derived)]
    public void Hole_and_trench_together_make_2_007_in_the_ground_and_5_03_hours()
    {
        var trench = TrenchOf(6, 0.575m);
        var dug = Plus(FirstVolume, trench);

        Near(2.007m, dug, 1);
        Near(2.709m, Loose("clay", dug), 1);
        Near(3710, Mass("clay", dug), 1);
        Near(5.03m, Plus(DiggingClay, Work.DigHours(Figures, trench, Named("clay"), Dig.Trench, Metres(0.575m))), 1);
    }

    [Fact, PublishedCheck(Subject, 51, Tabled, CheckMark.Derived)]
    public void Sand_in_both_leaves_0_792_over()
    {
        var dug = Plus(FirstVolume, TrenchOf(6, 0.575m));
        var left = Spoil.Surplus(Figures, dug, Less(dug, VolumeOf(Metres(0.3m)), TrenchOf(6, 0.2m)), Number(1))!;

        Near(0.792m, left, 1);
        Near(1.069m, Loose("clay", left), 1);
        Near(1470, Mass("clay", left), 1);
    }
}
