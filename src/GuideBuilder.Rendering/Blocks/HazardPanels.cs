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
                bindery.Say($"signal-{SignalNames.Of(signs[0].Word)}"),
                1,
                Phrase.Join("; ", signs.Select(h => bindery.Link(h.Id))),
                [new Block.Prose(bindery.Labels.Compose("stop-notice", ("number", WorstHazards.EmergencyNumber(bindery))))]),
        ];
    }

    /// <summary>The register: a row a hazard, then a panel for those that could kill.</summary>
    internal static ImmutableArray<Block> Register(Bindery bindery) => Make.Grid(
        bindery,
        "hazards-caption",
        ["column-hazard", "column-signal", "column-people", "column-before", "column-after"],
        Make.WorstFirst(bindery.Plan.Hazards).Select(h => Row(bindery, h.Hazard.Item)));

    /// <summary>The hazards of a step, gravest first and then as the step names them, as panels with the controls that its party carries out; a hazard on which that party has no hold shows all.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, Step step) =>
    [
        .. Make.Gravest(bindery.Plan.Hazards.Where(h => step.Hazards.Contains(h.Hazard.Item.Id)))
            .ThenBy(h => step.Hazards.IndexOf(h.Hazard.Item.Id))
            .Select(h => h.Hazard.Item)
            .Select(h => Panel(bindery, h, h.Controls.Any(c => c.By == step.Party) ? [.. h.Controls.Where(c => c.By == step.Party)] : h.Controls)),
    ];

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
        new(null, hazard.Word, bindery.Say($"signal-{SignalNames.Of(hazard.Word)}"), 1, bindery.Link(hazard.Id), text);

    private static GridRow Row(Bindery bindery, Hazard hazard) => Make.Row(
        null,
        bindery.Link(hazard.Id),
        Phrase.Of(bindery.Say($"signal-{SignalNames.Of(hazard.Word)}")),
        bindery.ReadLine(hazard.People),
        Phrase.Of(Score(bindery, hazard.Before)),
        Phrase.Of(Score(bindery, hazard.After)));
}
