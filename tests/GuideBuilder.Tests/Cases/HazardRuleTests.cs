using System.Text.RegularExpressions;
using CsCheck;
using GuideBuilder.Model;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>What must hold of the register whatever the home.</summary>
public sealed partial class HazardRuleTests
{
    private const int Iterations = 60;

    private static readonly string[] Bases =
    [
        "home: {nation: england}\nwish: {moves: [cutout, meter], could-stay: yes}\nplace: {kind: outside-box}",
        "home: {nation: scotland, kind: flat, built: 1960}\nwish: {moves: [meter]}\nplace: {kind: same-wall}",
        "home: {nation: ireland, kind: semi}\nintake: {service: overhead}\nwish: {moves: [cutout, meter]}\nplace: {kind: inside-elsewhere}",
        "home: {nation: northern-ireland}\nwish: {moves: unknown}\nplace: {kind: unknown}",
    ];

    // Each yes of these is a hazard; none of them rules a way out, and all are asked of every home.
    private static readonly string[] Dangers =
    [
        "people.medical-equipment", "people.telecare", "people.stairlift", "people.fridge-medicine", "people.frail-or-baby", "people.asthma", "people.children-or-pets",
        "people.fish-tank", "people.home-working", "intake.looped", "intake.second-cable", "intake.asbestos-board", "meter.history-doubt", "board.old-wiring",
        "place.flood", "place.only-stair", "place.box-metal", "place.party-wall", "ground.driven-items", "loads.solar", "loads.battery", "loads.generator",
        "loads.back-feed-car", "loads.tails-monitor", "loads.storage-heating", "works.enclosing", "works.dug-already", "works.pipes-change", "home.divided-or-merged",
    ];

    private static readonly Gen<AnswerSet> Homes = Gen.Select(Gen.OneOf(Bases), Gen.OneOf<string?>(["yes", "no", null]).Array[Dangers.Length], (words, options) =>
        Dangers.Zip(options).Aggregate(HazardRegister.Answers(words), (home, answer) => home.With(answer.First, answer.Second)));

    [Fact]
    public void A_hazard_fact_that_becomes_true_never_shortens_the_list() => Gen.Select(Homes, Gen.OneOf(Dangers)).Sample(
        (home, fact) => HazardRegister.Of(home.With(fact, "no")).IsSubsetOf(HazardRegister.Of(home.With(fact, "yes"))), iter: Iterations);

    [Fact]
    public void What_nobody_knows_brings_at_least_what_a_no_brings() => Gen.Select(Homes, Gen.OneOf(Dangers)).Sample(
        (home, fact) => HazardRegister.Of(home.With(fact, "no")).IsSubsetOf(HazardRegister.Of(home.With(fact, null))), iter: Iterations);

    [Fact]
    public void The_mostly_unknown_home_has_every_hazard_that_it_has_when_all_is_answered_no()
    {
        var unknown = HazardRegister.Answers("home: {nation: england, kind: terrace}\nwish: {moves: [cutout, meter], reason: [room-needed]}");
        var no = Content.Guidance.Questions
            .Where(q => q.Kind == QuestionKind.YesNo && unknown[q.Name].Standing == Standing.Unknown)
            .Aggregate(unknown, (home, q) => home.With(q.Name, "no"));

        Assert.Subset(HazardRegister.Of(unknown).ToHashSet(), HazardRegister.Of(no).ToHashSet());
    }

    [Fact]
    public void No_score_after_the_controls_is_above_the_one_before() =>
        Assert.All(Content.Guidance.Hazards, h => Assert.True(h.After.Score <= h.Before.Score && h.After.Severity == h.Before.Severity, h.Id));

    [Fact]
    public void What_can_kill_says_danger_or_warning() =>
        Assert.All(Content.Guidance.Hazards.Where(h => h.Before.Severity >= 5), h => Assert.True(h.Word >= SignalWord.Warning, h.Id));

    [Fact]
    public void Every_hazard_of_a_home_prints_what_makes_everybody_stop()
    {
        var home = Home.At("answers/avebury-close.yaml");

        Findings.AreNone(home.Plan.Hazards.Where(h => h.Hazard.IsPresent).Select(h => h.Hazard.Item)
            .Where(h => h.StopWhen.IsEmpty || !home.Words(h.Id).Contains(First(h.StopWhen.Words), StringComparison.Ordinal)).Select(h => h.Id));
    }

    [Fact]
    public void Another_nation_has_the_same_hazards() =>
        Assert.All(Content.Guidance.Nations, n => Assert.Equal(
            HazardRegister.Of(HazardRegister.Answers(Bases[0])).Order(StringComparer.Ordinal),
            HazardRegister.Of(HazardRegister.Answers(Bases[0].Replace("england", n.Id, StringComparison.Ordinal))).Order(StringComparer.Ordinal)));

    [Fact]
    public void No_text_tells_the_household_to_work_on_cutout_meter_cable_or_seals()
    {
        var told = Content.Guidance.Steps.Where(s => s.IsDuty).SelectMany(s => Sentences(s.Id, s.HowTo))
            .Concat(Content.Guidance.Hazards.SelectMany(h => h.Controls.Where(c => c.By == Party.Household).SelectMany(c => Sentences(h.Id, c.What))));

        Findings.AreNone(told.Where(s => Order().IsMatch(s.Sentence)).Select(s => $"{s.Id}: {s.Sentence}"));
    }

    private static string First(string words) => words.Split('{', '.')[0].Trim();

    private static IEnumerable<(string Id, string Sentence)> Sentences(string id, LocalText text) =>
        SentenceEnd().Split(text.Words).Select(s => (id, s.Trim(' ', '-', '\n', '*')));

    [GeneratedRegex(@"(?<=[.!?:])\s+|\n- ")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"^(Open|Touch|Pull|Remove|Cut|Unscrew|Undo|Loosen|Tighten|Lift|Bend|Move|Take out|Wipe|Break|Straighten|Shift)\b[^.]*\b(cutout|meter|seals?|tails|service cable|main fuse|clamp)\b")]
    private static partial Regex Order();
}
