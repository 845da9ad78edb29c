using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Planning.Electrical.Home;

namespace GuideBuilder.Tests.Planning.Electrical;

public sealed class ElectricalSheetTests
{
    private static readonly (string, object)[] Loaded =
    [
        ("loads.shower", Quantity.Of(9.5m, "kW")), ("loads.heat-pump", "planned"), ("loads.charger", "have"), ("loads.storage-heating", "yes"), ("loads.hot-tub", "yes"),
        ("loads.outbuilding", "yes"), ("loads.workshop", "yes"), ("loads.caravan-or-boat", "yes"), ("place.box-metal", "yes"),
    ];

    private static readonly Gen<(string, object)[]> Homes = Gen.Select(
        Gen.Shuffle(Known, 0, Known.Length),
        Gen.Int[0, 2].Select(i => new[] { "combined", "cable-sheath", "own-rod" }[i]),
        Gen.Int[0, 1].Select(i => new[] { "single", "three" }[i]),
        Gen.Bool,
        (given, earth, phases, loaded) => given.Append(("operator.earth-offered", (object)earth)).Append(("intake.phases", phases)).Concat(loaded ? Loaded : []).ToArray());

    [Fact]
    public void Nothing_answered_leaves_every_line_about_the_home_open()
    {
        var sheet = Sheet();

        Assert.All(sheet.Rows, r => Assert.NotEqual(LimitVerdict.Within, r.Verdict));
        Assert.Contains("loads.shower", sheet.Line("demand").Open);
        Assert.Contains("place.tails-length", sheet.Line("switch-fuse").Open);
        Assert.Contains("operator.earth-offered", sheet.Line("same-loop").Open);
    }

    [Fact]
    public void Unknown_earthing_is_never_within_a_loop_limit() => Homes.Sample(home =>
        Sheet([.. home.Where(a => a.Item1 != "operator.earth-offered")]).Rows.Where(r => r.Id.Contains("loop", StringComparison.Ordinal) || r.Id is "main-bonding" or "earthing-heat" or "armour-as-bond" or "rod-reading")
            .All(r => r.Verdict == LimitVerdict.NotKnown), iter: 300);

    [Fact]
    public void A_reading_of_another_earth_does_not_count() =>
        Assert.Equal(LimitVerdict.NotKnown, Sheet([.. Known, ("intake.earthing", "own-rod")]).Line("same-loop").Verdict);

    [Fact]
    public void A_reading_of_an_earth_that_stays_counts_as_measured()
    {
        var line = Sheet(Known).Line("same-loop");

        Assert.Equal(LimitVerdict.Within, line.Verdict);
        Assert.Equal(FigureOrigin.Measured, Assert.Single(line.Inputs, f => f.Name == "intake.earth-reading").Origin);
    }

    [Fact]
    public void Without_a_reading_the_declared_maximum_is_named_and_proves_nothing()
    {
        var line = Sheet([.. Known.Where(a => a.Item1 != "intake.earth-reading")]).Line("same-loop");

        Assert.Equal(LimitVerdict.NotKnown, line.Verdict);
        Assert.Equal(FigureOrigin.DeclaredMaximum, Assert.Single(line.Inputs, f => f.Name == "declared-combined-1991").Origin);
    }

    [Fact]
    public void Short_tails_bring_no_sub_main() => Assert.DoesNotContain(Sheet([.. Known, ("place.tails-length", Quantity.Of(1, "m"))]).Rows, r => r.Id.StartsWith("same-", StringComparison.Ordinal));

    [Fact]
    public void What_may_be_there_is_asked_about_under_combined_earthing()
    {
        Assert.DoesNotContain(Sheet(Known).Questions, q => q.Id == "combined-charger");
        Assert.Contains(Sheet([.. Known, ("loads.charger", "planned")]).Questions, q => q.Id == "combined-charger");
        Assert.Contains(Sheet([.. Known.Where(a => a.Item1 != "loads.charger")]).Questions, q => q.Id == "combined-charger");
        Assert.DoesNotContain(Sheet([.. Known, ("loads.charger", "planned"), ("operator.earth-offered", "cable-sheath")]).Questions, q => q.Id == "combined-charger");
    }

    [Fact]
    public void A_change_of_earth_asks_for_the_bonding_first()
    {
        Assert.Contains(Sheet([.. Known, ("intake.earthing", "cable-sheath")]).Questions, q => q.Id == "earth-bonding-first");
        Assert.DoesNotContain(Sheet(Known).Questions, q => q.Id == "earth-bonding-first");
    }

    [Fact]
    public void Every_line_names_the_rows_and_sources_it_rests_on() => Homes.Sample(home =>
    {
        var sources = Content.Guidance.Sources.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        return Sheet(home).Rows.All(r => r.Result is null || r.Id == "rod-expected" || r.Id.StartsWith("demand-", StringComparison.Ordinal) || (r.Rows.Length > 0 && r.Sources.Length > 0 && r.Sources.All(sources.Contains)));
    }, iter: 100);

    [Fact]
    public void Every_id_on_a_sheet_has_its_words() => Homes.Sample(home =>
    {
        var sheet = Sheet(home);
        var questions = Content.Guidance.Questions.Select(q => q.Name).ToHashSet(StringComparer.Ordinal);
        var wanted = sheet.Rows.Select(r => "electrical-line-" + r.Id)
            .Concat(sheet.Rows.Select(r => "electrical-formula-" + r.Formula))
            .Concat(sheet.Questions.Select(q => "electrical-ask-" + q.Id))
            .Concat(sheet.Rows.SelectMany(r => r.Inputs.Append(r.Limit)).OfType<SheetFigure>().Select(f => f.Name).Where(n => !questions.Contains(n)).Select(n => "electrical-figure-" + n))
            .Concat(sheet.Rows.Select(r => r.Result).OfType<Value.Option>().Select(o => "electrical-result-" + o.Id));
        Findings.AreNone(wanted.Where(id => !Content.Guidance.Labels.ContainsKey(id)).Distinct(StringComparer.Ordinal));
    }, iter: 100, threads: 1);

    [Theory]
    [InlineData("electrical.maximum-demand", "loads.shower")]
    [InlineData("electrical.maximum-demand", "loads.charger")]
    [InlineData("electrical.maximum-demand", "intake.phases")]
    [InlineData("electrical.demand-share-of-fuse", "intake.fuse-rating")]
    [InlineData("electrical.tails-limit", "operator.tails-limit")]
    [InlineData("electrical.switch-fuse", "place.tails-length")]
    public void A_fact_is_unknown_while_an_answer_it_rests_on_is(string fact, string question)
    {
        Assert.NotNull(Fact(fact, Of(Known)));
        Assert.Null(Fact(fact, Of([.. Known.Where(a => a.Item1 != question)])));
    }

    [Fact]
    public void The_facts_of_a_known_home_are_those_worked_out_by_hand()
    {
        Assert.Equal(56.86m, decimal.Round(Assert.IsType<Value.Amount>(Fact("electrical.maximum-demand", Of(Known))).Quantity.Amount, 2));
        Assert.Equal(71.08m, decimal.Round(Assert.IsType<Value.Amount>(Fact("electrical.demand-share-of-fuse", Of(Known))).Quantity.Amount, 2));
        Assert.Equal(new Value.Option("needed"), Fact("electrical.switch-fuse", Of(Known)));
        Assert.Equal(new Value.Option("ask"), Fact("electrical.switch-fuse", Of([.. Known, ("place.tails-length", Quantity.Of(2.8m, "m"))])));
        Assert.Equal(new Value.Option("not-needed"), Fact("electrical.switch-fuse", Of([.. Known, ("place.tails-length", Quantity.Of(2.6m, "m"))])));
    }

    [Fact]
    public void Every_electrical_fact_of_the_model_is_worked_out() =>
        Assert.Equal(CalculatedFact.All.Select(f => f.Name).Where(n => n.StartsWith("electrical.", StringComparison.Ordinal)).Order(StringComparer.Ordinal), GuideBuilder.Planning.Electrical.ElectricalFacts.ByName.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void A_guidance_without_these_questions_still_gets_a_sheet()
    {
        var sheet = Small.Plan(Small.Empty).Electrical;

        Assert.NotEmpty(sheet.Rows);
        Assert.All(sheet.Rows, r => Assert.Equal(LimitVerdict.NotKnown, r.Verdict));
    }
}
