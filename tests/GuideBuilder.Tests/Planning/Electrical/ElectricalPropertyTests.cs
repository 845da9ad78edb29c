using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

public sealed class ElectricalPropertyTests
{
    private static readonly Gen<CableFamily> Families = Gen.Enum<CableFamily>();
    private static readonly Gen<decimal> Amounts = Gen.Decimal[0, 500];

    [Fact]
    public void A_bigger_conductor_never_loses_more() => Gen.Select(Families, Gen.Enum<Phases>(), Amounts, Amounts).Sample((family, phases, amps, metres) =>
    {
        var drops = Cable.Sizes(Figures, family).Select(c => c.Drop(Figures, phases)).OfType<Quantity>()
            .Select(d => VoltageDrop.Of(Figures, d, Quantity.Of(amps, "A"), Quantity.Of(metres, "m"))!.Amount).ToArray();
        return drops.SequenceEqual(drops.OrderDescending());
    });

    [Fact]
    public void A_bigger_conductor_never_carries_less_nor_makes_a_bigger_loop() => Gen.Select(Families, Gen.Enum<LayingMethod>(), Gen.Enum<Phases>()).Sample((family, method, phases) =>
    {
        var cables = Cable.Sizes(Figures, family);
        var ratings = cables.Select(c => c.Rating(Figures, method, phases)).OfType<Quantity>().Select(q => q.Amount).ToArray();
        var loops = cables.Select(c => FaultLoops.OfRun(Figures, c, new ProtectiveConductor.Core(), Quantity.Of(10, "m"))).OfType<Quantity>().Select(q => q.Amount).ToArray();
        return ratings.SequenceEqual(ratings.Order()) && loops.SequenceEqual(loops.OrderDescending());
    });

    [Fact]
    public void A_declared_maximum_never_proves_anything() => Gen.Select(Amounts, Amounts).Sample((declared, limit) =>
        EarthLoop.Judge(Figures, new EarthLoop.DeclaredMaximum(Quantity.Of(declared / 100, "Ω")), Quantity.Of(limit / 100, "Ω")) is LimitVerdict.NotKnown or LimitVerdict.Over);

    [Fact]
    public void A_run_beyond_a_declared_loop_is_still_declared() =>
        Assert.IsType<EarthLoop.DeclaredMaximum>(new EarthLoop.DeclaredMaximum(Quantity.Of(0.35m, "Ω")).Plus(Figures, Quantity.Of(0.1m, "Ω")));

    [Fact]
    public void An_unknown_loop_is_not_known() => Assert.Equal(LimitVerdict.NotKnown, EarthLoop.Judge(Figures, null, Quantity.Of(1, "Ω")));

    [Fact]
    public void Over_the_limit_is_over_and_just_under_it_is_too_close() => Assert.Equal(
        [LimitVerdict.Within, LimitVerdict.TooCloseToCall, LimitVerdict.TooCloseToCall, LimitVerdict.Over],
        new[] { 90m, 90.1m, 100, 100.1m }.Select(v => Limits.AtMost(Figures, Quantity.Of(v, "A"), Quantity.Of(100, "A"))));

    [Fact]
    public void Amps_are_not_held_against_ohms() => Assert.Equal(LimitVerdict.NotKnown, Limits.AtMost(Figures, Quantity.Of(1, "A"), Quantity.Of(2, "Ω")));

    [Fact]
    public void Sharing_out_never_loads_a_line_more_than_one_line_for_all() => Gen.Select(Gen.Enum<LoadKind>(), Gen.Decimal[0, 60]).Array[1, 9].Sample(parts =>
    {
        var loads = parts.Select((p, i) => new Load($"load {i}", p.Item1, Quantity.Of(decimal.Round(p.Item2, 2), "A"))).ToArray();
        var shared = LineBalance.Allocate(Figures, loads)!.Value;
        return MaximumDemand.Of(Figures, shared)!.Highest.Base <= MaximumDemand.Of(Figures, loads)!.Highest.Base
            && shared.Select(l => l.Name).SequenceEqual(loads.Select(l => l.Name));
    }, iter: 200);

    [Fact]
    public void An_all_electric_house_is_shared_out_at_least_as_well_as_by_hand()
    {
        (LoadKind, decimal)[] house =
        [
            (LoadKind.Lighting, 2.61m), (LoadKind.Cooking, 47.83m), (LoadKind.InstantWater, 36.96m), (LoadKind.StoredWater, 13.04m), (LoadKind.HeatPump, 24),
            (LoadKind.StandardCircuit, 20), (LoadKind.StandardCircuit, 20), (LoadKind.StandardCircuit, 16), (LoadKind.Charger, 32),
        ];

        var shared = LineBalance.Allocate(Figures, house.Select(l => new Load(l.Item1.ToString(), l.Item1, Quantity.Of(l.Item2, "A"))))!;

        Assert.InRange(MaximumDemand.Of(Figures, shared)!.Highest.Amount, 54.5m, 66.40m);
    }
}
