using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Tests.Support;
using static GuideBuilder.Tests.Planning.Ground.Home;

namespace GuideBuilder.Tests.Planning.Ground;

public sealed class GroundSheetTests
{
    private static readonly string[] Prefixes = ["ground-line-", "ground-formula-", "ground-result-", "ground-figure-"];

    private static GroundSheet Sheet(Lookup known) => GroundSheets.Of(known, With(), Home.Tables)!;

    private static IEnumerable<string> Figures(GroundSheet sheet) =>
        sheet.Rows.SelectMany(r => r.Inputs.Append(r.Limit)).OfType<SheetFigure>().Select(f => f.Name).Where(n => !n.Contains('.')).Distinct(StringComparer.Ordinal);

    [Theory]
    [InlineData("yes", CablePosition.AsExposed)]
    [InlineData("no", CablePosition.SomewhereInHere)]
    [InlineData(null, CablePosition.SomewhereInHere)]
    public void The_cable_is_a_band_until_the_operator_has_laid_it_bare(string? exposed, CablePosition position) =>
        Assert.Equal(position, Sheet(With(("ground.cable-exposed", exposed))).Cable);

    [Fact]
    public void Every_line_has_a_result_a_source_and_its_inputs() => Assert.All(Sheet(With()).Rows, row =>
    {
        Assert.NotNull(row.Result);
        Assert.True(row.Sources.Length > 0 || row.Formula is "as-the-letter-says" or "upright" or "who-digs", row.Id);
        Assert.True(row.Inputs.Length > 0 || row.Formula == "as-tabled", row.Id);
        Assert.Empty(row.Open);
    });

    [Fact]
    public void An_answer_taken_for_granted_is_named_on_the_line_that_takes_it()
    {
        var line = Sheet(With(("ground.soil", null))).Line("spoil-loose");

        Assert.Equal(["ground.soil"], line.Open);
        Assert.Equal(FigureOrigin.Assumed, Assert.Single(line.Inputs, f => f.Name == "ground.soil").Origin);
    }

    [Fact]
    public void The_assumed_cover_is_marked_as_assumed() =>
        Assert.All(Sheet(With()).Line("counted-depth").Inputs, input => Assert.Equal(FigureOrigin.Assumed, input.Origin));

    [Fact]
    public void A_wall_that_nobody_has_measured_is_never_far_enough_away() =>
        Assert.All(new[] { "footing-line", "slope-back" }, id => Assert.Equal(LimitVerdict.NotKnown, Sheet(With(("ground.footing-distance", null))).Line(id).Verdict));

    [Fact]
    public void A_near_wall_stops_a_sloped_side() =>
        Assert.Equal([LimitVerdict.Within, LimitVerdict.Over], new[] { 2, 0.3m }.Select(away => Sheet(With(("ground.footing-distance", Metres(away)))).Line("slope-back").Verdict));

    // A hole of 1.5 by 1.2 m, a metre deep, in clay that may be wet: 1.5 m back on every side.
    [Fact]
    public void Every_figure_counts_the_hole_with_upright_sides_and_what_slopes_is_told_apart()
    {
        var deep = GroundSheets.Of(With(), With(("operator.hole-size", Metres(1.5m)), ("operator.hole-depth", Metres(1)), ("ground.wet", "yes")), Home.Tables)!;
        decimal Worth(string id) => ((Value.Amount)deep.Line(id).Result!).Quantity.Amount;

        Assert.Equal(new Value.Option("case-supported"), deep.Line("hole-case").Result);
        Assert.Equal(1.8m, Worth("hole-volume"));
        Assert.Equal(2 * (1.5m + 1.2m + (4 * 0.6m)), Worth("barrier"));
        Assert.Equal(Math.Ceiling((1.8m + 0.45m) * 1.35m / 0.06m), Worth("barrow-loads"));
        Assert.Equal([4.5m, 4.2m], new[] { Worth("sloped-length"), Worth("sloped-width") });
        Assert.Equal(8.85m, Worth("sloped-volume"));
        Assert.Equal(Math.Ceiling((8.85m + 0.45m) * 1.35m / 0.06m), Worth("sloped-barrows"));
        Assert.Equal(2 * (4.5m + 4.2m + (4 * 0.6m)), Worth("sloped-barrier"));
    }

    [Theory]
    [InlineData(0.89, false)]
    [InlineData(0.9, true)]
    public void A_ladder_stands_in_the_hole_from_the_depth_of_the_table(double depth, bool there) =>
        Assert.Equal(there, GroundSheets.Of(With(), With(("operator.hole-depth", Metres((decimal)depth))), Home.Tables)!.Rows.Any(r => r.Id == "ladder"));

    [Fact]
    public void Only_hands_dig_within_four_girths_of_a_trunk() =>
        Assert.Equal(Metres(2.4m).Amount, ((Value.Amount)GroundSheets.Of(With(), With(("ground.trees", "yes"), ("ground.tree-girth", Metres(0.6m))), Home.Tables)!.Line("tree-hands").Result!).Quantity.Amount);

    [Fact]
    public void Without_digging_there_is_no_sheet() => Assert.Null(GroundSheets.Of(With(("breaks-ground", "no")), With(("breaks-ground", "no")), Home.Tables));

    [Fact]
    public void Whatever_is_missing_nothing_throws() => Gen.Shuffle(Known, 0, Known.Length).Sample(
        given => GroundSheets.Of(Of([.. given.Select(g => (g.Item1, (object?)g.Item2))]), Of([.. given.Select(g => (g.Item1, (object?)g.Item2))]), Home.Tables) is null or { Stops.Length: 8 },
        iter: 200);

    [Fact]
    public void Every_line_formula_and_result_has_its_words()
    {
        var surfaces = Content.Guidance.Questions.Single(q => q.Name == GroundHome.SurfaceQuestion).Options.Select(o => GroundSheets.Of(With(), With((GroundHome.SurfaceQuestion, o.Id)), Home.Tables)!).ToArray();
        GroundSheet[] sheets = [.. surfaces, GroundSheets.Of(With(), With(("operator.hole-depth", Metres(1)), ("ground.trees", "yes"), ("ground.tree-girth", Metres(1))), Home.Tables)!];
        var rows = sheets.SelectMany(s => s.Rows).ToArray();
        var options = new[] { "look-and-keep-back", "slope-or-support", "never-alone", "firm-with-support", "case-upright", "case-supported", "case-by-firm", "ladder", "more-than-one", "skip-2", "skip-4", "skip-6", "ask", "household", "contractor", "trained-contractor", "operator" };
        string[] needed = [.. rows.Select(r => Prefixes[0] + r.Id).Distinct(), .. rows.Select(r => Prefixes[1] + r.Formula).Distinct(), .. options.Select(o => Prefixes[2] + o), .. sheets.SelectMany(Figures).Select(f => Prefixes[3] + f).Distinct()];

        Findings.AreNone(from id in needed where !Content.Guidance.Labels.ContainsKey(id) select id);
        Findings.AreNone(from id in Content.Guidance.Labels.Keys where Prefixes.Any(p => id.StartsWith(p, StringComparison.Ordinal)) && !needed.Contains(id) select id);
    }
}
