using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>Hazards as panels under their signal word: what it is, what it does, how to avoid it, when to stop.</summary>
internal static class HazardPanels
{
    private const int MostOnCover = 5;
    private const int Fatality = 5;

    private static readonly ImmutableArray<string> WhoseHands = ["fatal-only-you", "fatal-shared", "fatal-crews"];

    /// <summary>Hazards that suspend everything else; nothing when there are none.</summary>
    internal static ImmutableArray<Block> StopSigns(Bindery bindery)
    {
        ImmutableArray<Block> panels = [.. Make.WorstFirst(bindery.Plan.StopSigns).Select(h => Panel(bindery, h.Hazard.Item, h.Hazard.Item.Controls))];
        return panels.IsEmpty ? [] : [new Block.Heading(1, null, Phrase.Of(bindery.Say("stop-heading"))), Make.Say(bindery, "stop-first"), .. Levels.Lower(panels, 1)];
    }

    /// <summary>At most five, worst first, in short: what it is and when to stop; its own page says the rest.</summary>
    internal static ImmutableArray<Block> Top(Bindery bindery) =>
    [
        .. Make.WorstFirst(bindery.Plan.Hazards).Take(MostOnCover).Select(h => h.Hazard.Item).Select(h =>
            Under(bindery, h, Stop(bindery, h) is { IsEmpty: false } stop ? stop : [new Block.Prose(bindery.ReadLine(h.Cause))])),
    ];

    /// <summary>Everything that could kill, in a line each: the signal word, what it is, and when to stop. What the household alone can prevent comes first, then what it shares with the crews, then what is the crews' own.</summary>
    internal static ImmutableArray<Block> Fatal(Bindery bindery)
    {
        var fatal = Make.WorstFirst(bindery.Plan.Hazards).Select(h => h.Hazard.Item).Where(h => h.Before.Severity == Fatality).ToLookup(Hands);
        return [.. WhoseHands.SelectMany(label => Make.Under(bindery, label, Make.List(fatal[label].Select(h => Short(bindery, h)))))];
    }

    private static string Hands(Hazard hazard) =>
        WhoseHands[hazard.Controls.All(c => c.By == Party.Household) ? 0 : hazard.Controls.Any(c => c.By == Party.Household) ? 1 : 2];

    private static Phrase Short(Bindery bindery, Hazard hazard) =>
        Phrase.Of(new Inline.Strong(Phrase.Of(Signal(bindery, hazard.Word)))) + Phrase.Of(" ") + bindery.Link(hazard.Id) + Phrase.Of(". ") + StopWords(bindery, hazard);

    /// <summary>The register: a row a hazard, then a panel for those that could kill.</summary>
    internal static ImmutableArray<Block> Register(Bindery bindery) => Make.Grid(
        bindery,
        "hazards-caption",
        ["column-hazard", "column-signal", "column-people", "column-before", "column-after"],
        Make.WorstFirst(bindery.Plan.Hazards).Select(h => Row(bindery, h.Hazard.Item)));

    /// <summary>The hazards of a step, a panel for each signal word: a line a hazard with its stop trigger, so that the whole list is seen before the work; the page of each hazard says the rest.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery, Step step) => Make.Under(
        bindery,
        "panel-here",
        [.. Make.WorstFirst(bindery.Plan.Hazards.Where(h => step.Hazards.Contains(h.Hazard.Item.Id)))
            .Select(h => h.Hazard.Item)
            .GroupBy(h => h.Word)
            .Select(g => new Block.DangerPanel(null, g.Key, Signal(bindery, g.Key), 1, Phrase.Empty, Make.List(g.Select(h => Line(bindery, h)))))]);

    private static Phrase Line(Bindery bindery, Hazard hazard) =>
        Phrase.Of(new Inline.Strong(bindery.Link(hazard.Id))) + Phrase.Of(". ") + (hazard.StopWhen.IsEmpty ? bindery.ReadLine(hazard.Cause) : StopWords(bindery, hazard));

    private static string Signal(Bindery bindery, SignalWord word) => bindery.Say($"signal-{SignalNames.Of(word)}");

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

    private static Phrase StopWords(Bindery bindery, Hazard hazard) =>
        hazard.StopWhen.IsEmpty ? Phrase.Empty : Phrase.Of(new Inline.Strong(Phrase.Of(bindery.Say("stop-when") + " "))) + bindery.ReadLine(hazard.StopWhen);

    /// <summary>Severity and likelihood in words and figures.</summary>
    internal static string Score(Bindery bindery, RiskScore score) =>
        bindery.Say("risk-score", ("severity", bindery.Say(Invariant($"severity-{score.Severity}"))), ("likelihood", bindery.Say(Invariant($"likelihood-{score.Likelihood}"))));

    private static Block.DangerPanel Under(Bindery bindery, Hazard hazard, ImmutableArray<Block> text) =>
        new(null, hazard.Word, Signal(bindery, hazard.Word), 1, bindery.Link(hazard.Id), text);

    private static GridRow Row(Bindery bindery, Hazard hazard) => Make.Row(
        null,
        bindery.Link(hazard.Id),
        Phrase.Of(Signal(bindery, hazard.Word)),
        bindery.ReadLine(hazard.People),
        Phrase.Of(Score(bindery, hazard.Before)),
        Phrase.Of(Score(bindery, hazard.After)));
}
