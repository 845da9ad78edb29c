using System.Text.RegularExpressions;
using GuideBuilder.Model;
using GuideBuilder.Rendering.Collating;
using GuideBuilder.Rendering.Markup;
using GuideBuilder.Tests.Support;

namespace GuideBuilder.Tests.Cases;

/// <summary>Nothing stands in the guidance that does nothing: no source that nobody cites, no question whose answer changes no word.</summary>
public sealed class UseTests
{
    private static readonly string Code = string.Join('\n', new[] { "src/GuideBuilder.Planning", "src/GuideBuilder.Model/Calendars" }.SelectMany(f => Directory.EnumerateFiles(Repository.At(f), "*.cs", SearchOption.AllDirectories)).Order(StringComparer.Ordinal).Select(File.ReadAllText));

    [Fact]
    public void Every_source_is_cited() => Findings.AreNone(Unused(Content.Guidance, "unused-source"));

    [Fact]
    public void A_source_that_nobody_cites_is_found() =>
        Assert.StartsWith("source nobody-cites ", Assert.Single(Unused(Content.Guidance with { Sources = [.. Content.Guidance.Sources, Content.Guidance.Sources[0] with { Id = "nobody-cites" }] }, "unused-source")));

    [Fact]
    public void The_answer_to_every_question_changes_a_condition_a_sum_or_a_sentence() => Findings.AreNone(Idle(Content.Guidance));

    [Fact]
    public void A_question_that_decides_nothing_is_found() =>
        Assert.Equal(["home.idle"], Idle(Content.Guidance with { Questions = [.. Content.Guidance.Questions, Content.Guidance.Questions.First(q => q.Kind == QuestionKind.YesNo) with { Section = "home", Id = "idle" }] }));

    private static IEnumerable<string> Unused(Guidance guidance, string kind) => GuidanceCheck.Of(guidance, [], Guidances.Today).Where(f => f.Kind == kind).Select(f => f.Where);

    // What a condition of a rule, of a row or of a chance asks, what a calculator takes by name, and what a text prints or turns on. That another question hangs on it is not enough.
    private static IEnumerable<string> Idle(Guidance guidance)
    {
        var asked = KnownIds.Rules(guidance).SelectMany(Asked).ToHashSet(StringComparer.Ordinal);
        var said = string.Join('\n', GuidanceTexts.Of(guidance).Where(t => t.Kind != "question").Select(t => t.Text.Words));
        return guidance.Questions.Select(q => q.Name).Where(n => !asked.Contains(n) && !Names(Code, n) && !Names(said, n));
    }

    private static bool Names(string text, string name) => Regex.IsMatch(text, $"\"{Regex.Escape(name)}\"");

    private static IEnumerable<string> Asked(Rule rule) => rule.Head.AppliesIf.Names.Concat(rule switch
    {
        FactRule fact => fact.Rows.SelectMany(r => r.When.Names),
        Step step => step.MayHappen.SelectMany(m => m.AppliesIf.Names).Concat(step.After.Select(a => a.Or).Concat(step.NoLaterThan.Select(l => l.Or)).OfType<string>()),
        Cost { Quantity: { } quantity } => [quantity],
        Way way => way.MeetsWishIf.Names,
        _ => [],
    });
}
