using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Hazards as panels under their signal word: what it is, what it does, how to avoid it, when to stop.</summary>
internal static class HazardPanels
{
    /// <summary>Hazards that suspend everything else; nothing when there are none.</summary>
    internal static ImmutableArray<Block> StopSigns(Bindery bindery)
    {
        ImmutableArray<Block> panels = [.. Make.WorstFirst(bindery.Plan.StopSigns).Select(h => Panel(bindery, h.Hazard.Item, h.Hazard.Item.Controls))];
        return panels.IsEmpty ? [] : [new Block.Heading(1, null, Phrase.Of(bindery.Say("stop-heading"))), Make.Say(bindery, "stop-first"), .. Levels.Lower(panels, 1)];
    }

    /// <summary>While a stop sign stands, the line with which every page begins that does not show the signs themselves.</summary>
    internal static ImmutableArray<Block> Notice(Bindery bindery)
    {
        ImmutableArray<Hazard> signs = [.. Make.WorstFirst(bindery.Plan.StopSigns).Select(h => h.Hazard.Item)];
        return signs.IsEmpty ? [] :
        [
            new Block.DangerPanel(
                null,
                signs[0].Word,
                Signal(bindery, signs[0].Word),
                1,
                Phrase.Join("; ", signs.Select(h => bindery.Link(h.Id))),
                [new Block.Prose(bindery.Labels.Compose("stop-notice", WorstHazards.Numbers(bindery)))]),
        ];
    }

    /// <summary>The register: a row a hazard, then a panel for those that could kill.</summary>
    internal static ImmutableArray<Block> Register(Bindery bindery) => Make.Grid(
        bindery,
        "hazards-caption",
        ["column-hazard", "column-signal", "column-people", "column-before", "column-after"],
        Make.WorstFirst(bindery.Plan.Hazards).Select(h => Row(bindery, h.Hazard.Item)));

    /// <summary>The hazards of a step, gravest first and then as the step names them, a panel for each signal word: a line a hazard, so that the whole list is seen before the work; the page of each hazard says the rest.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, Step step) =>
    [
        .. Make.Gravest(bindery.Plan.Hazards.Where(h => step.Hazards.Contains(h.Hazard.Item.Id)))
            .ThenBy(h => step.Hazards.IndexOf(h.Hazard.Item.Id))
            .Select(h => h.Hazard.Item)
            .GroupBy(h => h.Word)
            .Select(g => new Block.DangerPanel(null, g.Key, Signal(bindery, g.Key), 1, Phrase.Of(bindery.Say($"panel-{SignalNames.Of(g.Key)}")), Make.List(g.Select(h => Line(bindery, h, step.Party))))),
    ];

    // What can kill says what its party does against it, as far as that party has a hold on it; anything else how it comes about.
    private static Phrase Line(Bindery bindery, Hazard hazard, string party)
    {
        var says = hazard.Before.Severity < WorstHazards.Fatality ? hazard.Cause : (hazard.Controls.FirstOrDefault(c => c.By == party) ?? hazard.Controls[0]).What;
        return Phrase.Of(new Inline.Strong(bindery.Link(hazard.Id))) + Phrase.Of(". ") + bindery.ReadLine(says) + Phrase.Of(" ") + StopWords(bindery, hazard);
    }

    /// <summary>The signal word as it is printed.</summary>
    internal static string Signal(Bindery bindery, SignalWord word) => bindery.Say($"signal-{SignalNames.Of(word)}");

    private static Block.DangerPanel Panel(Bindery bindery, Hazard hazard, ImmutableArray<HazardControl> controls) => Under(
        bindery,
        hazard,
        [
            new Block.Prose(bindery.ReadLine(hazard.Cause) + Phrase.Of(" ") + bindery.ReadLine(hazard.Harm)),
            .. Make.List(controls.Select(c => bindery.ReadLine(c.What))),
            .. Stop(bindery, hazard),
        ]);

    /// <summary>When to stop, as a sentence that begins with the word.</summary>
    internal static ImmutableArray<Block> Stop(Bindery bindery, Hazard hazard) =>
        hazard.StopWhen.IsEmpty ? [] : [new Block.Prose(StopWords(bindery, hazard))];

    /// <summary>When to stop, as words; empty where the hazard does not say.</summary>
    internal static Phrase StopWords(Bindery bindery, Hazard hazard) =>
        hazard.StopWhen.IsEmpty ? Phrase.Empty : Phrase.Of(new Inline.Strong(Phrase.Of(bindery.Say("stop-when") + " "))) + bindery.ReadLine(hazard.StopWhen);

    /// <summary>Severity and likelihood in words and figures.</summary>
    internal static string Score(Bindery bindery, RiskScore score) =>
        bindery.Say("risk-score", ("severity", bindery.Say(Invariant($"severity-{score.Severity}"))), ("likelihood", bindery.Say(Invariant($"likelihood-{score.Likelihood}"))));

    /// <summary>A text under the hazard's signal word and its title.</summary>
    internal static Block.DangerPanel Under(Bindery bindery, Hazard hazard, ImmutableArray<Block> text) =>
        new(null, hazard.Word, Signal(bindery, hazard.Word), 1, bindery.Link(hazard.Id), text);

    private static GridRow Row(Bindery bindery, Hazard hazard) => Make.Row(
        null,
        bindery.Link(hazard.Id),
        Phrase.Of(Signal(bindery, hazard.Word)),
        bindery.ReadLine(hazard.People),
        Phrase.Of(Score(bindery, hazard.Before)),
        Phrase.Of(Score(bindery, hazard.After)));
}
