using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The worst hazards in short, for the cover and for paper.</summary>
internal static class WorstHazards
{
    private const int MostOnCover = 5;
    private const int Fatality = 5;

    /// <summary>At most five, worst first, in short: what it is and when to stop; its own page says the rest. Signs that nobody has looked for share one.</summary>
    internal static ImmutableArray<Block> Top(Bindery bindery)
    {
        var (first, unseen, others) = Sorted(bindery);
        var panels = first.Select(h => Short(bindery, h)).Concat(unseen.IsEmpty ? [] : [Unseen(bindery, unseen)]).Concat(others.Select(h => Short(bindery, h)));
        return [.. panels.Take(MostOnCover)];
    }

    /// <summary>Everything that could kill, in a line each: the signal word, what it is, and when to stop. Signs that nobody has looked for share one.</summary>
    internal static ImmutableArray<Block> Fatal(Bindery bindery)
    {
        var (first, unseen, others) = Sorted(bindery);
        return Make.List(
        [
            .. first.Where(IsFatal).Select(h => Line(bindery, h)),
            .. unseen.IsEmpty ? ImmutableArray<Phrase>.Empty : [Strong(bindery, unseen[0].Word) + Phrase.Of(bindery.Say("signs-unseen") + ". ") + LookFor(bindery, unseen)],
            .. others.Where(IsFatal).Select(h => Line(bindery, h)),
        ]);
    }

    /// <summary>The number to ring for the network; empty where the nation has none.</summary>
    internal static Phrase EmergencyNumber(Bindery bindery) => bindery.Plan.Nation.Bodies.GetValueOrDefault("network-emergency") is { } number ? bindery.Words(number) : Phrase.Empty;

    // What stands before all else, the stop signs for which nobody has looked, and the rest; each worst first.
    private static (IEnumerable<Hazard> First, ImmutableArray<Hazard> Unseen, IEnumerable<Hazard> Others) Sorted(Bindery bindery)
    {
        // A sign that stands has its own panel at the head of the page.
        var all = Make.WorstFirst(bindery.Plan.Hazards.Except(bindery.Plan.StopSigns)).Select(h => h.Hazard).ToLookup(h => Make.IsFirst(h) ? 0 : h is { State: ItemState.Open, Item.StopSign: true } ? 1 : 2, h => h.Item);
        return (all[0], [.. all[1]], all[2]);
    }

    private static bool IsFatal(Hazard hazard) => hazard.Before.Severity == Fatality;

    private static Block.DangerPanel Short(Bindery bindery, Hazard hazard) =>
        HazardPanels.Under(bindery, hazard, HazardPanels.Stop(bindery, hazard) is { IsEmpty: false } stop ? stop : [new Block.Prose(bindery.ReadLine(hazard.Cause))]);

    private static Block.DangerPanel Unseen(Bindery bindery, ImmutableArray<Hazard> signs) =>
        new(null, signs[0].Word, bindery.Say($"signal-{SignalNames.Of(signs[0].Word)}"), 1, Phrase.Of(bindery.Say("signs-unseen")), [new Block.Prose(LookFor(bindery, signs))]);

    private static Phrase LookFor(Bindery bindery, ImmutableArray<Hazard> signs) =>
        bindery.Labels.Compose("signs-look-for", ("signs", Phrase.Join("; ", signs.Select(h => bindery.Link(h.Id)))), ("number", EmergencyNumber(bindery)));

    private static Phrase Strong(Bindery bindery, SignalWord word) => Phrase.Of(new Inline.Strong(Phrase.Of(bindery.Say($"signal-{SignalNames.Of(word)}")))) + Phrase.Of(" ");

    private static Phrase Line(Bindery bindery, Hazard hazard) => Strong(bindery, hazard.Word) + bindery.Link(hazard.Id) + Phrase.Of(". ") + HazardPanels.StopWords(bindery, hazard);
}
