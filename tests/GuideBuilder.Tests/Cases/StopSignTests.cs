using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>While a stop sign stands the book suspends the plan: it is rung about first, and nothing else is to be done, dated or counted.</summary>
public sealed partial class StopSignTests
{
    private const string Digs = "home: {nation: wales, kind: farm-or-barn}\nwish: {moves: [cutout, meter]}\nplace: {kind: outside-box, distance: 1.5 m}\nground: {who-digs: household}\ndates: {needed-by: 2027-06-01}\n";
    private const string Bare = Digs + "intake: {where: outside-box, service: underground, signs: [cable-exposed, leaning]}\n";
    private const string Visited = "log:\n  - {on: 2026-11-23, what: done, step: emergency-visit}\n";

    private static readonly string[] DealsWithIt = ["ring-emergency-line", "emergency-visit"];

    public static TheoryData<string> Signs =>
    [
        "smoke-or-flash", "burning-smell", "buzzing", "heat-marks", "bare-metal", "fresh-tar", "wet", "tingle-or-surging", "overhead-broken", "cable-exposed", "cable-damaged",
    ];

    [Theory]
    [MemberData(nameof(Signs))]
    public void Each_sign_alone_suspends_the_plan(string sign)
    {
        var home = Home.Given(Digs + $"intake: {{service: underground, signs: [{sign}]}}\n");
        var cover = home.Words("cover");

        Assert.True(home.Plan.IsSuspended);
        Assert.Equal(DealsWithIt, home.Plan.StopSteps);
        Assert.All(home.Plan.Steps, s => Assert.Null(s.Dates));
        Assert.Contains(home.Say("figure-suspended"), cover, StringComparison.Ordinal);
        Assert.Contains(home.Say("date-now"), cover, StringComparison.Ordinal);
        Assert.DoesNotMatch("£[0-9]", cover);
        Assert.DoesNotMatch("\\b20[23][0-9]\\b", cover.Replace("24 November 2026", "", StringComparison.Ordinal).Replace("24 May 2027", "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wales", "999", "105")]
    [InlineData("northern-ireland", "999", "03457 643 643")]
    [InlineData("ireland", "112 or 999", "1800 372 999")]
    public void Smoke_flame_and_the_hurt_go_to_the_fire_service_before_the_network(string nation, string life, string network)
    {
        var seen = Home.Given(Digs.Replace("wales", nation, StringComparison.Ordinal) + "intake: {service: underground, signs: [smoke-or-flash]}\n");
        var unseen = Home.Given(Digs.Replace("wales", nation, StringComparison.Ordinal) + "intake: {service: underground}\n");
        var words = unseen.Words("cover").Split(unseen.Say("signs-unseen"))[1];

        Findings.AreNone(from page in seen.Made
                         where page.Blocks[0] is Block.DangerPanel
                         let says = seen.Words(page.Id)
                         where !Before(says, life, network)
                         select page.Id);
        Assert.True(Before(words, life, network), words);
        Findings.AreNone(from file in Directory.EnumerateFiles(Repository.At("content"), "*", SearchOption.AllDirectories).Where(f => Path.GetExtension(f) is ".yaml" or ".md")
                         from line in File.ReadLines(file)
                         where Fire().IsMatch(line) && line.Contains("network-emergency", StringComparison.Ordinal) && !Before(line, "emergency-services", "network-emergency")
                         select $"{Path.GetFileName(file)}: {line.Trim()}");

        static bool Before(string words, string one, string other) =>
            words.IndexOf(one, StringComparison.Ordinal) is >= 0 and var first && words.IndexOf(other, StringComparison.Ordinal) is var second && (second < 0 || first < second);
    }

    [Fact]
    public void What_to_do_next_is_the_call_and_nothing_else()
    {
        var home = Home.Given(Bare);
        var next = home.Words("cover").Split("What to do next")[1].Split("What could hurt you")[0];
        var ticks = home.Made.Single(p => p.Id == "your-part").Blocks.OfType<Block.Entry>().Where(e => e.Text.Any(b => b is Block.Ticks)).ToList();

        Assert.Contains("Ring the emergency line and keep away", next, StringComparison.Ordinal);
        Assert.Empty(home.Plan.Steps.Where(s => s.Step.Item.Id != "ring-emergency-line" && next.Contains(s.Step.Item.Title.Words, StringComparison.Ordinal)).Select(s => s.Step.Item.Id));
        Assert.Single(ticks);
        Assert.Contains(home.Say("duties-wait"), home.Words("your-part"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_page_but_letters_and_what_deals_with_the_sign_begins_with_it()
    {
        var home = Home.Given(Bare);
        string[] itself = [.. DealsWithIt, "cover", "dangers", "emergencies", "stop-cable-exposed"];

        Findings.AreNone(home.Made.Where(p => p.Kind != PageKind.Letter && !itself.Contains(p.Id) && !IsNotice(p.Blocks[0])).Select(p => p.Id));
        Findings.AreNone(home.Made.Where(p => (p.Kind == PageKind.Letter || itself.Contains(p.Id)) && IsNotice(p.Blocks[0])).Select(p => p.Id));
        Assert.StartsWith(home.Say("stop-heading"), home.Words("cover").Split("Moving your electricity intake")[^1].Trim(), StringComparison.Ordinal);

        bool IsNotice(Block block) => block is Block.DangerPanel { Word: SignalWord.Danger, Text: [Block.Prose text] } && text.Words.PlainWords.Contains("Nothing of this plan is to be done", StringComparison.Ordinal);
    }

    [Fact]
    public void The_data_say_that_it_is_suspended_and_give_no_total_and_no_day()
    {
        var home = Home.Given(Bare);

        Assert.Contains("\"suspended\": true", home.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("\"finish\"", home.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("\"cost\": {", home.Data, StringComparison.Ordinal);
        Assert.DoesNotContain("\"book-by\"", home.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Bare + Visited)]
    [InlineData(Digs + "intake: {service: underground, signs: [leaning]}\n")]
    public void The_plan_goes_on_once_the_log_says_that_somebody_came_or_the_sign_is_gone(string answers)
    {
        var home = Home.Given(answers);

        Assert.False(home.Plan.IsSuspended);
        Assert.Empty(home.Plan.StopSteps);
        Assert.Contains(home.Plan.Steps, s => s.Step.Item.Id == "photograph-intake" && s.Dates is { Done: false });
        Assert.Contains("\"suspended\": false", home.Data, StringComparison.Ordinal);
        Assert.DoesNotContain(home.Say("stop-heading"), home.Words("cover"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_call_alone_does_not_end_it()
    {
        var home = Home.Given(Bare + "log:\n  - {on: 2026-11-24, what: done, step: ring-emergency-line}\n");

        Assert.True(home.Plan.IsSuspended);
        Assert.Equal(["emergency-visit"], home.Plan.StopSteps);
    }

    [Fact]
    public void Signs_that_nobody_has_looked_for_suspend_nothing_and_stay_in_the_book()
    {
        var home = Home.Given(Digs + "intake: {service: underground}\n");

        Assert.False(home.Plan.IsSuspended);
        Assert.All(DealsWithIt, id => Assert.Contains(home.Plan.Steps, s => s.Step.Item.Id == id && s is { Step.State: ItemState.Open, Dates: null }));
    }

    [Fact]
    public void Every_stop_sign_is_watched_by_the_step_that_ends_it_and_by_the_call() =>
        Findings.AreNone(from hazard in Content.Guidance.Hazards.Where(h => h.StopSign)
                         from step in Content.Guidance.Steps.Where(s => s.Id == hazard.Until || s.Id == "ring-emergency-line")
                         where !step.Hazards.Contains(hazard.Id)
                         select $"{step.Id} does not watch for {hazard.Id}");

    [GeneratedRegex("smoke(?! alarm)|flame", RegexOptions.IgnoreCase)]
    private static partial Regex Fire();
}
