using System.Text;
using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Rendering.Collating;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>An answer of the network operator outranks the book wherever the book speaks of it.</summary>
public sealed class OperatorAnswerTests
{
    private const string Home = """
        handbook: {format: 1, id: home}
        home: {nation: england, kind: semi, built: 1954, tenure: owner}
        people: {share-needs: yes}
        intake: {service: underground, cable-kind: plastic, looped: yes, asbestos-board: yes, earthing: cable-sheath}
        meter: {kind: credit}
        wish: {moves: [cutout, meter], way: outside-cabinet}
        place: {kind: outside-box, wall-stays: yes, tails-length: 2.5 m}
        ground: {who-digs: household, who-uncovers: household, joint-place: own-land, length: 3 m}

        """;

    // Two answers that a household may have got, in words of the answers file.
    private static readonly (string Question, string One, string Other)[] Answers =
    [
        ("asked-on", "2026-11-02", "2026-11-03"), ("answered-by", "Ann", "Bob"), ("reference", "R1", "R2"), ("visit-needed", "yes", "no"), ("meter-instructed-by", "household", "operator"),
        ("hole-size", "1.2 m", "1.6 m"), ("hole-width", "1 m", "1.4 m"), ("hole-depth", "0.8 m", "1.1 m"), ("who-uncovers-answer", "operator", "household"), ("who-fills", "operator", "contractor"),
        ("who-reinstates", "operator", "contractor"), ("duct-bore", "32 mm", "50 mm"), ("duct-wall", "solid", "twin-wall"), ("duct-colour", "black", "red"), ("duct-cord", "yes", "no"),
        ("cabinet-kind", "surface", "recessed"), ("cabinet-height", "0.5 m", "0.9 m"), ("tails-limit", "2 m", "3 m"), ("meter-carried", "no", "yes"), ("meter-off-first", "yes", "no"),
        ("earth-offered", "combined", "own-rod"), ("booking-notice", "10 working days", "20 working days"), ("free-cancel-notice", "2 working days", "10 working days"), ("quotation-valid", "90 days", "30 days"),
        ("neighbour-entry", "yes", "no"), ("asbestos-policy", "leaves", "proceeds"), ("evening-return", "They come back", "They come tomorrow"), ("loop-answer", "stays", "removed-charged"), ("siting-list", "yes", "no"),
        ("cable-answer", "joint-will-do", "new-cable"), ("fuse-answer", "enough", "bigger-fuse"), ("complaint-open", "yes", "no"),
    ];

    public static TheoryData<string> Questions => [.. Content.Guidance.Questions.Where(q => q.Section == "operator").Select(q => q.Id)];

    [Theory]
    [MemberData(nameof(Questions))]
    public void Another_answer_changes_every_page_that_speaks_of_it(string id)
    {
        var (_, one, other) = Answers.Single(a => a.Question == id);
        var (before, after) = (Given(id, one), Given(id, other));
        var both = before.Pages.Intersect(after.Pages).ToHashSet(StringComparer.Ordinal);
        var speak = Speaking($"operator.{id}").Where(both.Contains).ToList();
        var changed = both.Where(p => before.Words(p) != after.Words(p)).ToHashSet(StringComparer.Ordinal);

        Findings.AreNone(speak.Where(p => !changed.Contains(p)).Select(p => $"{p} says the same"));
        Assert.True(speak.Count > 0 || changed.Count > 1 || before.Pages.Count() != after.Pages.Count(), "no page speaks of it");
    }

    // Pages whose own text prints the answer or turns on it.
    private static IEnumerable<string> Speaking(string name) =>
        GuidanceTexts.Of(Content.Guidance).Where(t => t.Kind is "step" or "page" or "letter" && Regex.IsMatch(t.Text.Words, $"answer \"{Regex.Escape(name)}\"")).Select(t => t.Id).Distinct(StringComparer.Ordinal);

    // All else is answered alike, so that only this answer can make the difference.
    private static Home Given(string id, string answer) => Support.Home.Of(new SourceText("home.yaml", Encoding.UTF8.GetBytes(
        Home + $"operator: {{{string.Join(", ", Answers.Select(a => $"{a.Question}: {(a.Question == id ? answer : a.One)}"))}}}\n")));
}
