using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Rendering.Sheets;

/// <summary>The sheets as their readers see them, for homes under the real guidance.</summary>
public sealed class SheetPageTests
{
    private const string Place = "home: {nation: england, kind: semi, built: 1954}\nwish: {moves: [cutout, meter], reason: [room-needed], way: outside-cabinet}\n";
    private const string Loads = "loads: {cooker: 10 kW, shower: 9.5 kW, heat-pump: none, charger: planned, storage-heating: no, hot-tub: no, outbuilding: no, workshop: no}\n";
    private const string Intake = "intake: {service: underground, cable-kind: lead-sheathed, fuse-rating: 60 A, phases: single, looped: no, earthing: cable-sheath}\n";
    private const string New = "place: {kind: outside-box, tails-length: 6 m, height: 0.9 m, near: [gas-meter], gas-distance: 100 mm}\n";
    private const string Ground = "ground: {joint-place: own-land, who-digs: household, soil: clay, length: 3 m}\n";

    private static readonly Home Known = Home.Given(Place + Intake + New + Ground + Loads + "operator: {tails-limit: 2.5 m, hole-size: 1.6 m, cabinet-height: 0.6 m, duct-bore: 38 mm}\n");

    private static readonly Home Asked = Home.Given(Place + Intake + New + Ground + Loads);

    [Fact]
    public void Every_line_of_both_sheets_is_told_with_its_formula()
    {
        var (electrical, ground) = (Known.Words("electrical-sheet"), Known.Words("ground-sheet"));

        Findings.AreNone(from row in Known.Plan.Electrical.Rows where !electrical.Contains(Known.Say($"electrical-formula-{row.Formula}"), StringComparison.Ordinal) || !electrical.Contains(Known.Say($"electrical-line-{row.Id}"), StringComparison.Ordinal) select row.Id);
        Findings.AreNone(from row in Known.Plan.Ground!.Rows where row.Id != "rain" && !ground.Contains(Known.Say($"ground-line-{row.Id}"), StringComparison.Ordinal) select row.Id);
    }

    [Fact]
    public void A_line_names_the_rain_that_it_counts() => Assert.Contains("Litres of water that 10 mm of rain leaves in the hole", Known.Words("ground-sheet"), StringComparison.Ordinal);

    [Fact]
    public void A_home_of_which_little_is_known_is_told_what_each_answer_would_make_of_it()
    {
        var page = Home.At("answers/mostly-unknown.yaml").Words("electrical-sheet");

        Assert.Contains("If the answer is: Main fuse", page, StringComparison.Ordinal);
        Assert.Contains("If the answer is: Earth offered", page, StringComparison.Ordinal);
        Assert.Contains("45 A", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_source_of_a_line_is_named_with_its_edition()
    {
        var page = Known.Words("electrical-sheet");
        var used = Known.Plan.Electrical.Rows.SelectMany(r => r.Sources).Distinct();

        Findings.AreNone(from id in used from source in Content.Guidance.Sources where source.Id == id && !page.Contains(string.Join(", ", new[] { source.Title.Words, source.Edition }.Where(p => p.Length > 0)), StringComparison.Ordinal) select id);
    }

    [Fact]
    public void Every_question_to_the_electrician_is_a_box_to_tick() =>
        Findings.AreNone(Known.Plan.Electrical.Questions.Select(q => Known.Say($"electrical-ask-{q.Id}")).Where(q => !Known.Words("electrical-sheet").Contains(q, StringComparison.Ordinal)));

    [Fact]
    public void What_the_operator_answered_outranks_what_is_common()
    {
        Assert.Contains("Longest tails: 2.5 m (your operator says)", Known.Words("electrical-sheet"), StringComparison.Ordinal);
        Assert.Contains("Usual limit on tails: 3 m (common, ask)", Asked.Words("electrical-sheet"), StringComparison.Ordinal);
        Assert.Contains("Size of the hole: 1.6 m (your operator says)", Known.Words("ground-sheet"), StringComparison.Ordinal);
        Assert.Contains("Size of the hole: 1.5 m (common, ask)", Asked.Words("ground-sheet"), StringComparison.Ordinal);
        Assert.Contains("Bore of the duct: 38 mm (your operator says)", Known.Words("ground-sheet"), StringComparison.Ordinal);
        Assert.Contains("Usual trench: 50 mm (common, ask)", Asked.Words("ground-sheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_operators_height_outranks_the_rules_of_the_place()
    {
        SitingVerdict Height(Home home) => home.Plan.Siting.Single(v => v.Asks == "place.height");

        Assert.Equal(SitingOutcome.Conflicts, Height(Known).Outcome);
        Assert.Contains("Your operator says: 0.6 m", Known.Words("electrical-sheet"), StringComparison.Ordinal);
        Assert.Null(Asked.Plan.Siting.First(v => v.Asks == "place.height").OperatorSays);
    }

    [Fact]
    public void The_place_is_told_rule_by_rule_with_the_source_of_each()
    {
        var page = Known.Words("electrical-sheet");

        Findings.AreNone(from verdict in Known.Plan.Siting where !page.Contains(verdict.Rule.Cells["title"].Words, StringComparison.Ordinal) select verdict.Rule.Id);
        Assert.Contains("against the rule under 150 mm", page, StringComparison.Ordinal);
        Assert.Contains(Known.Say("siting-conflicts"), page, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_of_the_household_digs_at_a_cable_without_a_letter()
    {
        var page = Asked.Words("ground-sheet");

        Assert.Contains(Asked.Say("ground-never-cable"), page, StringComparison.Ordinal);
        Assert.Contains("to count the spoil, not to dig by", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_ground_is_opened_the_sheet_says_so()
    {
        var home = Home.Given("home: {nation: england}\nwish: {moves: [board], reason: [room-needed]}\n");

        Assert.Null(home.Plan.Ground);
        Assert.Contains(home.Say("ground-none"), home.Words("ground-sheet"), StringComparison.Ordinal);
    }
}
