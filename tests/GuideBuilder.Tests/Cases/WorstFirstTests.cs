using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>What the cover says of dangers first: what is known of this home before what nobody has looked for.</summary>
public sealed class WorstFirstTests
{
    private const int Panels = 5;
    private const string Digs = "home: {nation: england, kind: semi}\nintake: {service: underground, slack: no}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box}\nground: {who-digs: household}\n";

    [Fact]
    public void Who_lives_by_medical_equipment_reads_of_it_first()
    {
        var home = Home.Given(Digs + "people: {medical-equipment: yes}\n");

        Assert.Equal("Medical equipment without power", OnCover(home)[0]);
        Assert.Contains("Medical equipment without power", home.Words("cover"), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nobody_has_said_that_somebody_does_it_stands_in_its_own_place() =>
        Assert.NotEqual("Medical equipment without power", OnCover(Home.Given(Digs))[0]);

    [Fact]
    public void Who_holds_the_spade_reads_of_the_cable_although_nobody_has_looked_for_signs()
    {
        var shown = OnCover(Home.Given(Digs + "people: {medical-equipment: yes}\n"));

        Assert.Equal(Panels, shown.Count);
        Assert.Contains("Hitting an electric cable", shown);
    }

    [Fact]
    public void Signs_that_nobody_has_looked_for_are_one_entry_that_names_them_all()
    {
        var home = Home.Given(Digs);
        var cover = home.Words("cover");

        Assert.Single(OnCover(home), home.Say("signs-unseen"));
        Assert.All(Content.Guidance.Hazards.Where(h => h.StopSign), h => Assert.Contains(h.Title.Words, cover, StringComparison.Ordinal));
        Assert.Contains("For any other of these keep away and ring 105", cover, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_they_were_looked_for_and_not_found_there_is_no_such_entry() =>
        Assert.DoesNotContain("Signs that nobody has looked for yet", OnCover(Home.Given(Digs.Replace("slack: no", "slack: no, signs: none", StringComparison.Ordinal))));

    [Fact]
    public void Of_the_same_word_and_severity_what_is_settled_stands_first()
    {
        var home = Home.Given(Digs);
        var rows = home.Made.Single(p => p.Id == "dangers").Blocks.OfType<Block.Grid>().Single().Rows.Select(r => r.Cells[0].PlainWords).ToList();
        var states = rows.Select(title => home.Plan.Hazards.Single(h => h.Hazard.IsPresent && h.Hazard.Item.Title.Words == title).Hazard).ToList();

        Assert.All(states.Zip(states.Skip(1)).Where(p => p.First.Item.Word == p.Second.Item.Word && p.First.Item.Before.Severity == p.Second.Item.Before.Severity), p => Assert.True(p.First.State >= p.Second.State, p.Second.Item.Id));
        Assert.Contains(states, h => h.State == ItemState.Open);
    }

    [Fact]
    public void The_spade_stops_at_any_cable_and_not_only_at_one_that_comes_as_a_surprise()
    {
        var stop = Content.Guidance.Hazards.Single(h => h.Id == "electric-cable-strike").StopWhen.Words;

        Assert.DoesNotContain("expected", stop, StringComparison.Ordinal);
        Assert.All(["tape", "tile", "sand", "duct", "cable, even one that you looked for"], w => Assert.Contains(w, stop, StringComparison.Ordinal));
        Findings.AreNone(Home.Given(Digs).PagesWith("that was not expected"));
    }

    private static List<string> OnCover(Home home) => [.. home.Made.Single(p => p.Id == "cover").Blocks.OfType<Block.DangerPanel>().Select(p => p.Title.PlainWords)];
}
