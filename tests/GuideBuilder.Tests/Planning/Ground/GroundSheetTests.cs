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
        var rows = surfaces.SelectMany(s => s.Rows).ToArray();
        var options = new[] { "look-and-keep-back", "slope-or-support", "never-alone", "firm-with-support", "more-than-one", "skip-2", "skip-4", "skip-6", "ask", "household", "contractor", "trained-contractor", "operator" };
        string[] needed = ["ground-line-tree", .. rows.Select(r => Prefixes[0] + r.Id).Distinct(), .. rows.Select(r => Prefixes[1] + r.Formula).Distinct(), .. options.Select(o => Prefixes[2] + o), .. surfaces.SelectMany(Figures).Select(f => Prefixes[3] + f).Distinct()];

        Findings.AreNone(from id in needed where !Content.Guidance.Labels.ContainsKey(id) select id);
        Findings.AreNone(from id in Content.Guidance.Labels.Keys where Prefixes.Any(p => id.StartsWith(p, StringComparison.Ordinal)) && !needed.Contains(id) select id);
    }
}
