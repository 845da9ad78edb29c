using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>What can kill stands on the pages of the steps at which it can happen.</summary>
public sealed class WhereItHappensTests
{
    private const int Fatality = 5;
    private const string Moves = "wish: {moves: [cutout, meter]}\n";

    private static readonly string[] Meters = ["day-meter", "day-meter-carried", "day-meter-by-networks"];

    public static TheoryData<string, string[]> Places => new()
    {
        { "shock-at-intake", ["photograph-intake", "clear-before-visits", "electrician-survey", "asbestos-sample", "day-fuse-out", "day-meter-off", "day-cutout", "day-joint", "day-overhead", "day-unloop", .. Meters, "day-live-tests", "old-intake-gone", "take-away-asbestos"] },
        { "arc-flash", ["day-fuse-out", "day-meter-off", "day-cutout", "day-joint", "day-overhead", "day-unloop", .. Meters, "day-live-tests", "old-intake-gone"] },
        { "loss-of-earth", ["day-uncover-cable", "day-joint", "day-unloop", "day-cutout", "day-overhead", "prepare-tails", "day-live-tests", "return-day-cutout"] },
        { "loss-of-neutral", ["day-joint", "day-unloop", "day-cutout", "day-overhead", "day-live-tests", "watch-first-month"] },
        { "electric-cable-strike", ["dig-joint-hole", "dig-joint-hole-by-contractor", "dig-joint-hole-by-operator", "dig-trench", "dig-trench-by-contractor", "day-uncover-cable", "uncover-cable-by-contractor", "fill-hole", "fill-hole-by-contractor", "fill-hole-by-operator", "make-good-surface"] },
        { "gas-pipe-strike", ["dig-joint-hole", "dig-joint-hole-by-contractor", "dig-joint-hole-by-operator", "dig-trench", "dig-trench-by-contractor"] },
        { "excavation-collapse", ["dig-joint-hole", "dig-trench", "lay-duct", "day-joint", "fill-hole"] },
        { "asbestos-fibres", ["clear-before-visits", "clear-access", "asbestos-sample", "electrician-survey", "make-wall-hole", "old-intake-gone", "take-away-asbestos"] },
        { "second-source-back-feed", ["day-shut-down-generation", "day-fuse-out", "day-joint", "day-live-tests", "restart-generation"] },
        { "medical-equipment-stops", ["tell-priority-register", "plan-for-failed-day", "agree-works-day", "eve-ring-round"] },
        { "old-cable-live", ["old-intake-gone", "make-good-inside", "close-old-supply"] },
    };

    // One of each kind of way, nation and building, so that what hangs on them is somewhere.
    public static TheoryData<string> Homes =>
    [
        "home: {nation: england}\n" + Moves + "place: {kind: outside-box}\nground: {who-digs: household}",
        "home: {nation: scotland, kind: flat}\nmeter: {kind: key-or-card, height: 2.2 m}\nwish: {moves: [meter]}\nplace: {kind: same-wall}",
        "home: {nation: ireland, kind: semi}\nintake: {service: overhead}\n" + Moves + "place: {kind: inside-elsewhere}",
        "home: {nation: northern-ireland}\nground: {driven-items: yes}\n" + Moves + "place: {kind: temporary}\nloads: {generator: yes, solar: yes}",
        "home: {nation: wales}\nwish: {moves: [board]}\nworks: {kinds: [extension, demolition]}\nloads: {generator: yes, charger: have}\npeople: {medical-equipment: yes}",
    ];

    [Fact]
    public void Nothing_that_can_kill_is_without_a_step()
    {
        var watched = Content.Guidance.Steps.SelectMany(s => s.Hazards).ToHashSet(StringComparer.Ordinal);

        Findings.AreNone(Content.Guidance.Hazards.Where(h => h.Before.Severity == Fatality && !watched.Contains(h.Id)).Select(h => h.Id));
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void It_stands_on_each_step_at_which_it_can_happen(string hazard, string[] steps) =>
        Findings.AreNone(steps.Where(id => !Content.Guidance.Steps.Single(s => s.Id == id).Hazards.Contains(hazard)));

    [Fact]
    public void Whoever_works_at_the_intake_without_supply_is_told_of_shock() =>
        Findings.AreNone(Content.Guidance.Steps
            .Where(s => s is { Meeting: not null, SupplyOff: true } && !s.Hazards.Contains("shock-at-intake") && s.Id is not ("day-release-hole" or "day-board-on" or "return-day-board-on"))
            .Select(s => s.Id));

    [Theory]
    [MemberData(nameof(Homes))]
    public void In_a_home_each_danger_of_its_way_stands_on_a_step_of_its_plan(string answers)
    {
        var plan = Home.Given(answers).Plan;
        var watched = plan.Steps.Where(s => s.Step.IsPresent).SelectMany(s => s.Step.Item.Hazards).ToHashSet(StringComparer.Ordinal);

        Findings.AreNone(plan.Hazards
            .Where(h => h.Hazard is { IsPresent: true, Item.Before.Severity: Fatality } && h.Ways.Contains(plan.ChosenWay.Item.Id) && !watched.Contains(h.Hazard.Item.Id))
            .Select(h => h.Hazard.Item.Id));
    }

    [Fact]
    public void The_page_on_jointing_a_lead_cable_begins_with_loss_of_the_earth_shock_and_flash()
    {
        var first = Home.At("answers/avebury-close.yaml").Made.Single(p => p.Id == "day-joint").Blocks.OfType<Block.DangerPanel>().First();
        var lines = first.Text.OfType<Block.Listing>().Single().Items.Select(i => i.OfType<Block.Prose>().Single().Words.PlainWords).ToList();

        Assert.Equal(SignalWord.Danger, first.Word);
        Assert.Equal(["Loss of the earth", "Electric shock at the intake", "Flash and burns when the intake is worked on"], lines.Take(3).Select(l => l.Split(". ")[0]));
    }

    [Theory]
    [InlineData("answers/avebury-close.yaml")]
    [InlineData("answers/mostly-unknown.yaml")]
    public void On_the_page_of_a_step_what_can_kill_says_what_its_party_does_and_when_to_stop(string answers)
    {
        var home = Home.At(answers);

        Findings.AreNone(
            from step in home.Plan.Steps
            where step.Step.IsPresent
            let said = home.Words(step.Step.Item.Id)
            from hazard in home.Plan.Hazards
            let item = hazard.Hazard.Item
            where hazard.Hazard.IsPresent && item.Before.Severity == Fatality && step.Step.Item.Hazards.Contains(item.Id)
            let control = item.Controls.FirstOrDefault(c => c.By == step.Step.Item.Party) ?? item.Controls[0]
            where !said.Contains(Plain(control.What), StringComparison.Ordinal) || !said.Contains("Stop when: " + Plain(item.StopWhen), StringComparison.Ordinal)
            select $"{step.Step.Item.Id}: {item.Id}");
    }

    private static string Plain(LocalText text) => text.Words.Split("{{")[0].Trim();
}
