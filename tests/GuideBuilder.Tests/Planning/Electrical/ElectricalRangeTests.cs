using GuideBuilder.Model;
using GuideBuilder.Planning.Electrical;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

/// <summary>Inputs that are negative, absurd, of another kind or missing give no result, never a number.</summary>
public sealed class ElectricalRangeTests
{
    private static readonly Cable Cable = new(CableFamily.Armoured70, Quantity.Of(25, "mm²"));
    private static readonly ProtectiveConductor Armour = new ProtectiveConductor.Armour(2);

    public static TheoryData<decimal> BadAmounts => [-1, -0.001m, 100_000_000];

    private static Quantity A(decimal amount) => Quantity.Of(amount, "A");

    [Theory]
    [MemberData(nameof(BadAmounts))]
    public void A_current_out_of_range_gives_nothing(decimal amps)
    {
        Assert.Null(Diversity.Allowance(Figures, Premises.Household, LoadKind.Lighting, [new("lamp", LoadKind.Lighting, A(amps))]));
        Assert.Null(MaximumDemand.Of(Figures, [new("lamp", LoadKind.Lighting, A(amps))]));
        Assert.Null(LineBalance.Allocate(Figures, [new("lamp", LoadKind.Lighting, A(amps))]));
        Assert.Null(MaximumDemand.Headroom(Figures, A(amps), A(1)));
        Assert.Null(Power.Apparent(Figures, A(amps)));
        Assert.Null(VoltageDrop.Of(Figures, Quantity.Of(1, "mΩ/m"), A(amps), Quantity.Of(1, "m")));
        Assert.Null(RatingFactors.NeededRating(Figures, A(amps), 1));
        Assert.Null(Adiabatic.LeastSize(Figures, A(amps), 1, 115));
        Assert.Null(FaultLoops.GreatestForBreaker(Figures, "b", A(amps)));
        Assert.Null(Selectivity.Ratio(Figures, A(amps), A(60)));
        Assert.Null(Rod.GreatestResistance(Figures, A(amps)));
        Assert.Null(OpenNeutral.GreatestElectrode(Figures, A(amps)));
        Assert.Equal(OperatorNotice.NotKnown, OperatorNotices.For(Figures, A(amps), A(60), false, false));
    }

    [Theory]
    [MemberData(nameof(BadAmounts))]
    public void A_length_or_size_or_resistance_out_of_range_gives_nothing(decimal amount)
    {
        Assert.Null(VoltageDrop.Of(Figures, Quantity.Of(1, "mΩ/m"), A(1), Quantity.Of(amount, "m")));
        Assert.Null(FaultLoops.OfRun(Figures, Cable, Armour, Quantity.Of(amount, "m")));
        Assert.Equal(SwitchFuse.NotKnown, Tails.Need(Figures, Quantity.Of(amount, "m"), null));
        Assert.Equal(SwitchFuse.NotKnown, Tails.Need(Figures, Quantity.Of(2, "m"), Quantity.Of(amount, "m")));
        Assert.Null(ProtectiveSizes.ByTable(Figures, Quantity.Of(amount, "mm²")));
        Assert.Null(ProtectiveSizes.BondingCombined(Figures, Quantity.Of(amount, "mm²")));
        Assert.Null(ProtectiveSizes.BondingSeparate(Figures, Quantity.Of(amount, "mm²")));
        Assert.Null(FaultLoops.FaultCurrent(Figures, Quantity.Of(amount, "Ω")));
        Assert.Null(new EarthLoop.Measured(Quantity.Of(amount, "Ω")).Plus(Figures, Quantity.Of(0, "Ω")));
        Assert.Equal(LimitVerdict.NotKnown, EarthLoop.Judge(Figures, new EarthLoop.Measured(Quantity.Of(amount, "Ω")), Quantity.Of(1, "Ω")));
        Assert.Null(Power.Current(Figures, Quantity.Of(amount, "kW")));
        Assert.Null(Rod.Resistance(Figures, amount, Quantity.Of(2, "m"), Quantity.Of(16, "mm")));
    }

    [Fact]
    public void Nothing_to_divide_by_gives_nothing()
    {
        Assert.Null(FaultLoops.FaultCurrent(Figures, Quantity.Of(0, "Ω")));
        Assert.Null(MaximumDemand.ShareOfFuse(Figures, A(10), A(0)));
        Assert.Null(Rod.GreatestResistance(Figures, A(0)));
        Assert.Null(Rod.Resistance(Figures, 100, Quantity.Of(0, "m"), Quantity.Of(16, "mm")));
        Assert.Null(Rod.Resistance(Figures, 100, Quantity.Of(1, "mm"), Quantity.Of(16, "mm")));
        Assert.Null(OpenNeutral.TouchVoltage(Figures, Quantity.Of(10, "Ω"), A(0)));
        Assert.Null(Adiabatic.LeastSize(Figures, A(10), 1, 0));
        Assert.Null(VoltageDrop.CoolerFactor(Figures, A(10), A(0), 70));
        Assert.Null(FaultLoops.FaultCurrentAfter(Figures, A(0), Quantity.Of(0, "Ω")));
    }

    [Fact]
    public void A_quantity_of_another_kind_gives_nothing()
    {
        Assert.Null(VoltageDrop.Of(Figures, A(1), A(1), A(1)));
        Assert.Null(ProtectiveSizes.ByTable(Figures, Quantity.Of(16, "m²")));
        Assert.Null(FaultLoops.FaultCurrent(Figures, A(1)));
    }

    [Fact]
    public void Beyond_the_tables_there_is_no_figure()
    {
        Assert.Null(RatingFactors.Air(Figures, 70, 55));
        Assert.Null(RatingFactors.Grouping(Figures, 11));
        Assert.Null(RatingFactors.Grouping(Figures, 0));
        Assert.Null(RatingFactors.Soil(Figures, inDuct: false, 3.5m));
        Assert.Null(Cable.Rating(Figures, LayingMethod.E, Phases.One));
        Assert.Null(FaultLoops.GreatestForFuse(Figures, "bs-88-3", A(125)));
        Assert.Null(FaultLoops.GreatestForBreaker(Figures, "z", A(32)));
        Assert.Null(Adiabatic.LeastSize(Figures, A(100), 5.1m, 115));
        Assert.Null(Conductors.StandardSize(Figures, Quantity.Of(95, "mm²")));
        Assert.Null(new ProtectiveConductor.InFlatCable().PerMetre(Figures, Cable));
        Assert.Null(CombinedEarthing.For(Figures, "marina"));
    }

    [Fact]
    public void Between_rows_the_harder_surroundings_count()
    {
        Assert.Equal(0.87m, RatingFactors.Air(Figures, 70, 36));
        Assert.Equal(1.12m, RatingFactors.Soil(Figures, inDuct: false, 1.6m));
        Assert.Equal(0.78m, RatingFactors.Insulation(Figures, Quantity.Of(60, "mm")));
        Assert.Equal(0.50m, RatingFactors.Insulation(Figures, Quantity.Of(2, "m")));
        Assert.Equal(1.00m, RatingFactors.Insulation(Figures, Quantity.Of(0, "mm")));
    }

    [Fact]
    public void Without_the_table_nothing_is_worked_out_and_nothing_breaks()
    {
        var none = new Tables([], [], [], [], [], []);
        var sheet = ElectricalSheets.Of(Of(Known), none);

        Assert.All(ElectricalFacts.ByName.Where(f => f.Key != "electrical.tails-limit"), f => Assert.Null(f.Value(Of(Known), none)));
        Assert.All(sheet.Rows, r => Assert.Equal(LimitVerdict.NotKnown, r.Verdict));
        Assert.All(sheet.Rows, r => Assert.Null(r.Result));
    }
}
