using GuideBuilder.Model;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

/// <summary>Lines of the sheet that an electrician would work out again by hand.</summary>
public sealed class ElectricalLineTests
{
    private static decimal? Number(SheetRow row) => (row.Result as Value.Amount)?.Quantity.Amount;

    private static SheetRow Line(string id, params (string, object)[] changed) => Sheet([.. Known, .. changed]).Line(id);

    [Fact]
    public void What_each_kind_counts_for_adds_up_to_the_demand()
    {
        var sheet = Sheet([.. Known, ("loads.shower", Quantity.Of(9.5m, "kW")), ("loads.charger", "planned"), ("loads.heat-pump", "have")]);
        var kinds = sheet.Rows.Where(r => r.Id.StartsWith("counts-", StringComparison.Ordinal)).ToArray();

        Assert.Equal(["counts-lighting", "counts-standard-circuit", "counts-instant-water", "counts-cooking", "counts-heat-pump", "counts-charger"], kinds.Select(k => k.Id));
        Assert.Equal(Number(sheet.Line("demand"))!.Value, kinds.Sum(k => Number(k)!.Value), 6);
        Assert.Equal(Number(sheet.Line("demand"))!.Value * 0.23m, Number(sheet.Line("demand-power"))!.Value, 6);
    }

    [Fact]
    public void Each_share_that_is_used_is_printed() =>
        Assert.Equal(["diversity-first", "diversity-share-above"], Line("counts-cooking").Inputs.Where(f => f.Origin == FigureOrigin.Table).Select(f => f.Name));

    // Lighting 1.15, two rings of 32, a shower of 41.30, a cooker of 20.04, a charger of 32 A: two of the four heaps must share a line, and cooker with charger are the least.
    [Fact]
    public void On_three_phases_every_load_stands_on_one_line_and_the_highest_is_as_low_as_can_be()
    {
        var sheet = Sheet([.. Known, ("intake.phases", "three"), ("loads.shower", Quantity.Of(9.5m, "kW")), ("loads.cooker", Quantity.Of(10, "kW")), ("loads.charger", "planned")]);
        var lines = new[] { "demand-first", "demand-second", "demand-third" }.Select(sheet.Line).ToArray();

        Assert.Equal(
            ["loads.cooker", "loads.shower", "typical-charger", "typical-circuit-1", "typical-circuit-2", "typical-lighting"],
            lines.SelectMany(l => l.Inputs).Select(f => f.Name).Order(StringComparer.Ordinal));
        Assert.Equal(52.04m, decimal.Round(Number(sheet.Line("demand"))!.Value, 2));
        Assert.Equal(Number(sheet.Line("demand")), lines.Max(Number));
        Assert.Equal(lines.Sum(l => Number(l)!.Value) * 0.23m, Number(sheet.Line("demand-power"))!.Value, 6);
    }

    [Theory]
    [InlineData(3, "tell-afterwards", LimitVerdict.TooCloseToCall, true)]
    [InlineData(0, "tell-afterwards", LimitVerdict.Within, false)]
    [InlineData(10, "apply-first", LimitVerdict.Over, true)]
    public void The_threshold_of_the_operator_is_printed_and_near_it_the_question_is_raised(int cooker, string result, LimitVerdict verdict, bool asked)
    {
        (string, object)[] home = [.. Known, ("loads.cooker", Quantity.Of(cooker, "kW"))];
        var line = Sheet(home).Line("notice");

        Assert.Equal((new Value.Option(result), verdict), (line.Result, line.Verdict));
        Assert.Equal(new Value.Amount(Quantity.Of(60, "A")), line.Limit!.Worth);
        Assert.Equal(asked, Sheet(home).Questions.Any(q => q.Id == "operator-first"));
    }

    [Theory]
    [InlineData("same-size", "16 mm²")]
    [InlineData("other-buried-size", "25 mm²")]
    [InlineData("other-hot-clipped-size", "10 mm²")]
    [InlineData("other-hot-buried-size", "16 mm²")]
    [InlineData("other-flat-clipped-size", "16 mm²")]
    public void Each_family_and_way_of_laying_has_its_size_behind_80_A(string line, string size) => Assert.Equal(size, (Line(line).Result as Value.Amount)?.Quantity.ToString());

    [Fact]
    public void Where_no_size_of_the_tables_does_that_is_said()
    {
        var line = Line("other-flat-in-insulated-wall-size");

        Assert.Equal(new Value.Option("no-size"), line.Result);
        Assert.DoesNotContain(Sheet([.. Known, ("intake.phases", "three")]).Rows, r => r.Id.StartsWith("other-flat", StringComparison.Ordinal));
    }

    // 16 mm² clipped at 80 A: 3.45 V allowed, 2.8 mΩ/m. With 0.48 Ω it takes 35 mm²: 0.51 − 0.48 Ω over 0.524 × 1.20 + 2.6 × 1.18 mΩ/m.
    [Fact]
    public void The_longest_run_is_the_shorter_of_voltage_and_loop()
    {
        Assert.Equal(15.4m, decimal.Round(Number(Line("same-longest-drop"))!.Value, 1));
        Assert.Equal(15.4m, decimal.Round(Number(Line("same-longest"))!.Value, 1));
        Assert.Equal(8.1m, decimal.Round(Number(Line("same-longest", ("intake.earth-reading", Quantity.Of(0.48m, "Ω"))))!.Value, 1));
    }

    [Fact]
    public void Where_no_length_does_that_is_said_and_never_a_length_below_nothing()
    {
        var line = Line("same-longest", ("intake.earthing", "cable-sheath"), ("operator.earth-offered", "cable-sheath"), ("intake.earth-reading", Quantity.Of(0.8m, "Ω")));

        Assert.Equal(new Value.Option("no-length"), line.Result);
        Assert.Equal(LimitVerdict.Over, Line("same-loop", ("intake.earthing", "cable-sheath"), ("operator.earth-offered", "cable-sheath"), ("intake.earth-reading", Quantity.Of(0.8m, "Ω"))).Verdict);
    }

    [Fact]
    public void A_declared_greatest_value_is_never_within_nor_over()
    {
        (string, object)[] home = [.. Known.Where(a => a.Item1 != "intake.earth-reading"), ("operator.earth-offered", "cable-sheath")];

        Assert.All(Sheet(home).Rows.Where(r => r.Id.Contains("loop", StringComparison.Ordinal) || r.Id.StartsWith("declared-", StringComparison.Ordinal)), r => Assert.Equal(LimitVerdict.NotKnown, r.Verdict));
        Assert.Equal(new Value.Option("no-length-declared"), Sheet(home).Line("same-longest").Result);
        Assert.Contains(Sheet(home).Questions, q => q.Id == "loop-measured");
    }

    [Fact]
    public void What_a_size_carries_is_printed_beside_what_it_must()
    {
        var line = Line("same-carries");

        Assert.Equal((80, 89, LimitVerdict.Within), (Number(line), ((Value.Amount)line.Limit!.Worth!).Quantity.Amount, line.Verdict));
        Assert.Equal(LimitVerdict.TooCloseToCall, Line("other-hot-clipped-carries").Verdict);
    }

    [Theory]
    [InlineData(12, "run-sub-main", 0.42)]
    [InlineData(2.6, "run-tails", 0.364)]
    [InlineData(2.9, "run-ask", 0.406)]
    public void Beyond_the_limit_only_the_first_part_counts_as_tails(double metres, string run, double drop)
    {
        Assert.Equal(new Value.Option(run), Line("whole-run", ("place.tails-length", Quantity.Of((decimal)metres, "m"))).Result);
        Assert.Equal((decimal)drop, Number(Line("tails-drop", ("place.tails-length", Quantity.Of((decimal)metres, "m")))));
    }

    [Fact]
    public void What_is_known_of_the_demand_is_printed_and_may_be_over_and_never_within()
    {
        SheetRow SoFar(decimal fuse) => Sheet([.. Known.Where(a => a.Item1 != "loads.workshop"), ("loads.shower", Quantity.Of(9.5m, "kW")), ("intake.fuse-rating", Quantity.Of(fuse, "A"))]).Line("demand-so-far");

        Assert.Equal(98.17m, decimal.Round(Number(SoFar(60))!.Value, 2));
        Assert.Equal([LimitVerdict.Over, LimitVerdict.NotKnown], new[] { 60m, 200 }.Select(f => SoFar(f).Verdict));
        Assert.DoesNotContain(Sheet(Known).Rows, r => r.Id == "demand-so-far");
    }

    [Fact]
    public void What_settles_a_figure_settles_those_that_rest_on_it()
    {
        var sheet = Sheet([.. Known.Where(a => a.Item1 != "intake.fuse-rating")]);

        Assert.All(sheet.Rows.Where(r => r.Id.StartsWith("selective-", StringComparison.Ordinal)), r => Assert.Contains("intake.fuse-rating", r.Open));
    }

    [Fact]
    public void The_fuse_that_leaves_the_main_one_whole_is_held_against_the_demand()
    {
        Assert.Equal(45, Number(Line("selective-fuse")));
        Assert.Equal(LimitVerdict.Over, Line("selective-demand").Verdict);
        Assert.Equal(32, Number(Line("selective-fuse", ("intake.fuse-rating", Quantity.Of(60, "A")))));
        Assert.Equal(new Value.Option("no-fuse"), Line("selective-fuse", ("intake.fuse-rating", Quantity.Of(32, "A"))).Result);
    }

    [Theory]
    [InlineData("england", true)]
    [InlineData("ireland", false)]
    public void What_the_network_keeps_to_is_printed_where_its_regulations_hold(string nation, bool printed)
    {
        var sheet = ElectricalSheets(nation);

        Assert.Equal(printed, sheet.Rows.Any(r => r.Id == "supply-voltage"));
        Assert.Equal(printed, sheet.Rows.Any(r => r.Id == "generation"));
    }

    private static ElectricalSheet ElectricalSheets(string nation)
    {
        var known = Of(Known);
        return GuideBuilder.Planning.Electrical.ElectricalSheets.Of(
            name => name == "home.nation" ? (Given.Answered)known(name) with { Value = new Value.Option(nation) } : known(name), Home.Tables);
    }
}
