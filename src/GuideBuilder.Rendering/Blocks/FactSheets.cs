using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The electrical and the ground sheet: what the calculators made of the answers.</summary>
internal static class FactSheets
{
    /// <summary>Figures to talk over with the electrician.</summary>
    internal static ImmutableArray<Block> Electrical(Bindery bindery) => Sheet(bindery, "electrical-caption", "electrical.", "loads", "board");

    /// <summary>Figures for the hole and the trench.</summary>
    internal static ImmutableArray<Block> Ground(Bindery bindery) => Sheet(bindery, "ground-caption", "ground.", "ground");

    /// <summary>The printed name of a calculated fact.</summary>
    internal static string NameOf(Bindery bindery, string fact) => bindery.Say($"fact-{fact.Replace('.', '-')}");

    private static ImmutableArray<Block> Sheet(Bindery bindery, string caption, string prefix, params string[] sections)
    {
        var facts = CalculatedFact.All.Where(f => f.Name.StartsWith(prefix, StringComparison.Ordinal)).Select(f => Fact(bindery, f.Name));
        var answers = bindery.Guidance.Questions.Where(q => sections.Contains(q.Section)).Select(q => Answer(bindery, q));
        return Make.Grid(bindery, caption, ["column-what", "column-value"], facts.Concat(answers).OfType<GridRow>().ToList());
    }

    private static GridRow? Fact(Bindery bindery, string name) =>
        bindery.Plan.Facts.Derived.TryGetValue(name, out var fact) ? Make.Row(null, Phrase.Of(NameOf(bindery, name)), Phrase.Of(bindery.Answers.Of(fact) ?? bindery.Say("answer-unknown"))) : null;

    private static GridRow? Answer(Bindery bindery, Question question) => bindery.Plan.Answers[question.Name] switch
    {
        { Standing: Standing.NotAsked } => null,
        var given => Make.Row(null, bindery.Link(question), Phrase.Of(bindery.Answers.Of(given) ?? bindery.Say("answer-unknown"))),
    };
}
