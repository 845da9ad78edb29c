using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Published.ElectricalCase;

namespace GuideBuilder.Tests.Published;

/// <summary>Cases 1 to 23: what a home draws, and what the operator wants to know of it.</summary>
public sealed class ElectricalDemandChecks
{
    private static readonly Load[] GasHeated = [Of(LoadKind.Lighting, 400m / 230), Of(LoadKind.StandardCircuit, 32), Of(LoadKind.StandardCircuit, 32), Of(LoadKind.Cooking, 3000m / 230)];

    private static readonly Load[] AllElectric =
    [
        Of(LoadKind.Lighting, 600m / 230), Of(LoadKind.Cooking, 11000m / 230), Of(LoadKind.InstantWater, 8500m / 230), Of(LoadKind.StoredWater, 3000m / 230),
        Of(LoadKind.HeatPump, 24), Of(LoadKind.StandardCircuit, 20), Of(LoadKind.StandardCircuit, 20), Of(LoadKind.StandardCircuit, 16), Of(LoadKind.Charger, 32),
    ];

    private static Quantity? Demand(params IEnumerable<Load> loads) => MaximumDemand.Of(Figures, loads)?.First;

    [Fact, PublishedCheck(Subject, 1, TradeBodyDemand, CheckMark.Read)]
    public void Lighting_of_12_A_counts_for_7_92() => Near(7.92m, Counts(LoadKind.Lighting, false, 12), 0.01m);

    [Fact, PublishedCheck(Subject, 2, TradeBodyDemand, CheckMark.Read)]
    public void Two_rings_of_32_A_count_for_44_8() => Near(44.8m, Counts(LoadKind.StandardCircuit, false, 32, 32), 0.01m);

    [Fact, PublishedCheck(Subject, 3, TradeBodyDemand, CheckMark.Read)]
    public void A_cooker_of_32_A_with_a_socket_counts_for_21_6() => Near(21.6m, Counts(LoadKind.Cooking, true, 32), 0.01m);

    [Fact, PublishedCheck(Subject, 4, TradeBodyDemand, CheckMark.Read)]
    public void The_trade_bodys_house_comes_to_90_32_A() => Near(90.32m, Demand(
        Of(LoadKind.StandardCircuit, 32), Of(LoadKind.StandardCircuit, 32), Of(LoadKind.Lighting, 6), Of(LoadKind.Lighting, 6), Of(LoadKind.StoredWater, 16), Of(LoadKind.Cooking, 32, socket: true)), 0.01m);

    [Fact, PublishedCheck(Subject, 5, CircuitList, CheckMark.Read)]
    public void A_cooker_of_24_16_A_with_a_socket_counts_for_19_25() => Near(19.25m, Counts(LoadKind.Cooking, true, 24.16m), 0.01m);

    // The list gives its lighting after diversity, lets an oven count whole, and prints 6.41 where 40 % of a radial of 16 A is 6.40.
    [Fact, PublishedCheck(Subject, 6, CircuitList, CheckMark.Read)]
    public void The_list_of_circuits_comes_to_97_29_A()
    {
        var sockets = Counts(LoadKind.StandardCircuit, false, 32, 32, 32, 16)!.Amount;
        var cooker = Counts(LoadKind.Cooking, true, 24.16m)!.Amount;

        Near(97.29m - (6.41m - 6.40m), 1.51m + 0.41m + 2.11m + sockets + 10 + cooker, 0.01m);
    }

    [Fact, PublishedCheck(Subject, 7, Contractor, CheckMark.Read)]
    public void A_cooker_of_50_A_without_a_socket_counts_for_22() => Near(22.0m, Counts(LoadKind.Cooking, false, 50), 0.01m);

    [Fact, PublishedCheck(Subject, 8, TableH2, CheckMark.Derived)]
    public void A_cooker_of_12_kW_at_230_V_counts_for_22_65() => Near(22.65m, Counts(LoadKind.Cooking, false, OfPower(12).Amount), 0.01m);

    [Fact, PublishedCheck(Subject, 9, DoubleDiversity, CheckMark.Read)]
    public void A_cooker_of_66_A_counts_for_26_8() => Near(26.8m, Counts(LoadKind.Cooking, false, 66), 0.01m);

    [Fact, PublishedCheck(Subject, 10, DoubleDiversity, CheckMark.Read)]
    public void The_sum_of_the_writer_who_diversifies_twice_is_66_13()
    {
        decimal[] rest = [30, 4.16m, 4.16m, 30, 30];

        Near(66.13m, Counts(LoadKind.Cooking, false, 66)!.Amount + (rest.Sum() * Figures.Share("diversity-household-standard-circuit", "others")), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 11, TableH2, CheckMark.Derived)]
    public void Heating_of_6_kW_counts_for_18_04() => Near(18.04m, Counts(LoadKind.Heating, false, OfPower(6).Amount), 0.01m);

    [Fact, PublishedCheck(Subject, 12, TableH2, CheckMark.Derived)]
    public void Three_water_heaters_count_for_81_52() =>
        Near(81.52m, Counts(LoadKind.InstantWater, false, OfPower(9.5m).Amount, OfPower(8.5m).Amount, OfPower(3).Amount), 0.01m);

    [Fact, PublishedCheck(Subject, 13, ElectriciansGuide, CheckMark.Derived)]
    public void The_shop_comes_to_433_5_A_or_144_5_on_each_line()
    {
        var loads = new[] { 6, 6, 3, 3, 3, 3, 3, 3, 3 }.Select(kw => (LoadKind.StoredWater, (decimal)kw))
            .Concat([(LoadKind.InstantWater, 3), (LoadKind.InstantWater, 3), (LoadKind.Cooking, 6), (LoadKind.Cooking, 6), (LoadKind.Cooking, 4)])
            .Append((LoadKind.Lighting, 12 * Figures.Number("discharge-lighting", "factor")!.Value))
            .Select(l => new Load("load", l.Item1, OfPower(l.Item2, 240)))
            .Concat(Enumerable.Repeat(Of(LoadKind.StandardCircuit, 30), 8));
        var total = MaximumDemand.Of(Figures, loads, Premises.Shop)!.First.Amount;

        Near(433.5m, total, 0.1m);
        Near(144.5m, total / 3, 0.1m);
    }

    [Fact, PublishedCheck(Subject, 14, TableH2, CheckMark.Derived)]
    public void A_small_house_heated_by_gas_comes_to_56_86_A()
    {
        Near(56.86m, Demand(GasHeated), 0.01m);
        Assert.True(Demand(GasHeated)!.Amount <= 60);
    }

    [Fact, PublishedCheck(Subject, 15, TableH2, CheckMark.Derived)]
    public void With_a_shower_of_9_5_kW_it_comes_to_98_17_A()
    {
        var demand = Demand([.. GasHeated, Of(LoadKind.InstantWater, OfPower(9.5m).Amount)]);

        Near(98.17m, demand, 0.01m);
        Assert.Equal(LimitVerdict.Over, Limits.AtMost(Figures, demand, Amps(80)));
        Assert.Equal(LimitVerdict.TooCloseToCall, Limits.AtMost(Figures, demand, Amps(100)));
    }

    [Fact, PublishedCheck(Subject, 16, Notice, CheckMark.Read)]
    public void Up_to_60_A_one_tells_and_above_it_one_applies() => Assert.Equal(
        [OperatorNotice.TellAfterwards, OperatorNotice.TellAfterwards, OperatorNotice.ApplyFirst],
        new[] { 56.86m, 60.0m, 60.1m }.Select(a => OperatorNotices.For(Figures, Amps(a), Amps(60), looped: false, worryAboutEquipment: false)));

    [Fact, PublishedCheck(Subject, 17, TableH2, CheckMark.Derived)]
    public void An_all_electric_house_comes_to_163_47_A() => Near(163.47m, Demand(AllElectric), 0.01m);

    [Fact, PublishedCheck(Subject, 18, TableH2, CheckMark.Derived)]
    public void Without_its_charger_nothing_is_left_of_100_A()
    {
        var rest = Demand(AllElectric.Where(l => l.Kind != LoadKind.Charger));

        Near(131.47m, rest, 0.01m);
        Near(0, MaximumDemand.Headroom(Figures, Amps(100), rest!), 0);
    }

    [Fact, PublishedCheck(Subject, 19, TableH2, CheckMark.Derived)]
    public void On_three_lines_the_most_loaded_carries_66_40_A()
    {
        Line On(LoadKind kind) => kind switch
        {
            LoadKind.InstantWater or LoadKind.Lighting or LoadKind.StoredWater => Line.First,
            LoadKind.HeatPump or LoadKind.Cooking => Line.Second,
            _ => Line.Third,
        };
        var demand = MaximumDemand.Of(Figures, AllElectric.Select(l => l with { Line = On(l.Kind) }))!;

        Near(51.72m, demand.First, 0.01m);
        Near(45.35m, demand.Second, 0.01m);
        Near(66.40m, demand.Third, 0.01m);
        Assert.Equal(demand.Third, demand.Highest);
        Assert.Equal(LimitVerdict.Within, Limits.AtMost(Figures, demand.Highest, Amps(80)));
    }

    [Fact, PublishedCheck(Subject, 20, TableH2, CheckMark.Derived)]
    public void On_one_line_it_is_63_47_A_over_100() => Near(63.47m, Demand(AllElectric)!.Amount - 100, 0.01m);

    [Fact, PublishedCheck(Subject, 21, Notice, CheckMark.Read)]
    public void Fuses_of_60_80_and_100_A_are_13_8_18_4_and_23_kVA()
    {
        Near(13.8m, Power.Apparent(Figures, Amps(60)), 0.01m);
        Near(18.4m, Power.Apparent(Figures, Amps(80)), 0.01m);
        Near(23.0m, Power.Apparent(Figures, Amps(100)), 0.01m);
    }

    [Fact, PublishedCheck(Subject, 22, Ohm, CheckMark.Derived)]
    public void Three_phases_of_100_A_are_69_28_kVA() => Near(69.28m, Power.Apparent(Figures, Amps(100), Phases.Three), 0.01m);

    [Fact, PublishedCheck(Subject, 23, Ohm, CheckMark.Derived)]
    public void Chargers_of_7_36_and_22_kW_draw_32_and_31_75_A()
    {
        Near(32.00m, Power.Current(Figures, Kilowatts(7.36m)), 0.01m);
        Near(31.75m, Power.Current(Figures, Kilowatts(22), Phases.Three), 0.01m);
    }
}
