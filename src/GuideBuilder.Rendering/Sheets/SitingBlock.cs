using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Sheets;

/// <summary>The new place held against each rule: meets, ask, against it, or not known. The operator alone accepts a place.</summary>
internal static class SitingBlock
{
    private static readonly ImmutableArray<string> Bounds = ["conflicts-under", "ask-under", "ask-over", "conflicts-over"];

    /// <summary>The table of rules.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var words = new SheetWords(bindery, "siting");
        return bindery.Plan.Siting.IsEmpty
            ? [Make.Say(bindery, "none-here")]
            : [.. Make.Grid(bindery, "siting-caption", ["column-rule", "column-new-place", "column-verdict"], bindery.Plan.Siting.Select(v => Row(words, v)))];
    }

    private static GridRow Row(SheetWords words, SitingVerdict verdict) => Make.Row(
        null,
        Rule(words, verdict) + Phrase.Of(new Inline.LineEnd()) + words.Bindery.Labels.Compose("sheet-sources", ("sources", words.Sources(verdict.Rule.Basis.Sources))),
        words.Name(verdict.Asks) + Phrase.Of(": " + words.Worth(verdict.Worth, verdict.Asks)),
        Phrase.Of(words.Say(NameOf(verdict.Outcome))));

    private static Phrase Rule(SheetWords words, SitingVerdict verdict)
    {
        var bindery = words.Bindery;
        var title = verdict.Rule.Cells.TryGetValue("title", out var cell) ? cell.Words : "";
        var bounds = verdict.OperatorSays is { } said
            ? [$"{bindery.Say("operator-says")}: {words.Worth(said)}"]
            : Bounds.Where(verdict.Rule.Cells.ContainsKey).Select(b => bindery.Say($"siting-bound-{b}", ("0", verdict.Rule.Cells[b].Words)))
                .Append(verdict.Rule.Cells.ContainsKey("areas") ? verdict.OperatorKnown ? bindery.Say("siting-own-rule") : bindery.Say("siting-own-rule-if", ("0", OperatorOf(bindery, verdict.Rule))) : bindery.Say("common-ask"));
        return Phrase.Of(new Inline.Strong(Phrase.Of(title))) + Phrase.Of(" (" + string.Join("; ", bounds) + ")");
    }

    // The operator of the areas for which a rule stands.
    private static string OperatorOf(Bindery bindery, TableRow rule) => string.Join(
        ", ",
        rule.Cells["areas"].Words.Split(' ').Select(a => bindery.Guidance.Tables.Rows.FirstOrDefault(r => r.Id == $"area-{a}")?.Cells["operator"].Words).OfType<string>().Distinct(StringComparer.Ordinal));

    private static string NameOf(SitingOutcome outcome) => outcome switch
    {
        SitingOutcome.Meets => "meets",
        SitingOutcome.NotKnown => "not-known",
        SitingOutcome.Ask => "ask",
        SitingOutcome.Conflicts => "conflicts",
        _ => throw new UnreachableException(),
    };
}
