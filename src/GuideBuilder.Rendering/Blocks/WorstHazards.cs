using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The worst hazards in short, for the cover and for paper.</summary>
internal static class WorstHazards
{
    /// <summary>The severity of what can kill.</summary>
    internal const int Fatality = 5;

    private const int MostOnCover = 5;

    private static readonly ImmutableArray<string> WhoseHands = ["fatal-only-you", "fatal-shared", "fatal-crews"];

    /// <summary>At most five, worst first, in short: what it is and when to stop; its own page says the rest. Signs that nobody has looked for share one.</summary>
    internal static ImmutableArray<Block> Top(Bindery bindery)
    {
        var (first, unseen, others) = Sorted(bindery);
        var panels = first.Select(h => Short(bindery, h)).Concat(unseen.IsEmpty ? [] : [Unseen(bindery, unseen)]).Concat(others.Select(h => Short(bindery, h)));
        return [.. panels.Take(MostOnCover)];
    }

    /// <summary>Everything that could kill, in a line each: the signal word, what it is, and when to stop. Signs that nobody has looked for share one. What the household alone can prevent comes first, then what it shares with the crews, then what is the crews' own.</summary>
    internal static ImmutableArray<Block> Fatal(Bindery bindery)
    {
        var (first, unseen, others) = Sorted(bindery);
        IEnumerable<(string Hands, Phrase Says)> lines =
        [
            .. first.Where(IsFatal).Select(h => (Hands(h), Line(bindery, h))),
            .. unseen.IsEmpty ? ImmutableArray<(string, Phrase)>.Empty : [(WhoseHands[1], Strong(bindery, unseen[0].Word) + Phrase.Of(bindery.Say("signs-unseen") + ". ") + LookFor(bindery, unseen))],
            .. others.Where(IsFatal).Select(h => (Hands(h), Line(bindery, h))),
        ];
        var sorted = lines.ToLookup(l => l.Hands, l => l.Says);
        return [.. WhoseHands.SelectMany(label => Make.Under(bindery, label, Make.List(sorted[label])))];
    }

    /// <summary>The numbers to ring, as a label asks for them: for fire and life, and for the network; empty where the nation has none.</summary>
    internal static (string Name, Phrase Value)[] Numbers(Bindery bindery) => [("life", Number(bindery, "emergency-services")), ("number", Number(bindery, "network-emergency"))];

    private static Phrase Number(Bindery bindery, string body) => bindery.Plan.Nation.Bodies.GetValueOrDefault(body) is { } number ? bindery.Words(number) : Phrase.Empty;

    // What stands before all else, the stop signs for which nobody has looked, and the rest; each worst first.
    private static (IEnumerable<Hazard> First, ImmutableArray<Hazard> Unseen, IEnumerable<Hazard> Others) Sorted(Bindery bindery)
    {
        // A sign that stands has its own panel at the head of the page.
        var all = Make.WorstFirst(bindery.Plan.Hazards.Except(bindery.Plan.StopSigns)).Select(h => h.Hazard).ToLookup(h => Make.IsFirst(h) ? 0 : h is { State: ItemState.Open, Item.StopSign: true } ? 1 : 2, h => h.Item);
        return (all[0], [.. all[1]], all[2]);
    }

    private static string Hands(Hazard hazard) => WhoseHands[hazard.Controls.All(c => c.By == Party.Household) ? 0 : hazard.Controls.Any(c => c.By == Party.Household) ? 1 : 2];

    private static bool IsFatal(Hazard hazard) => hazard.Before.Severity == Fatality;

    private static Block.DangerPanel Short(Bindery bindery, Hazard hazard) =>
        HazardPanels.Under(bindery, hazard, HazardPanels.Stop(bindery, hazard) is { IsEmpty: false } stop ? stop : [new Block.Prose(bindery.ReadLine(hazard.Cause))]);

    private static Block.DangerPanel Unseen(Bindery bindery, ImmutableArray<Hazard> signs) =>
        new(null, signs[0].Word, HazardPanels.Signal(bindery, signs[0].Word), 1, Phrase.Of(bindery.Say("signs-unseen")), [new Block.Prose(LookFor(bindery, signs))]);

    private static Phrase LookFor(Bindery bindery, ImmutableArray<Hazard> signs) =>
        bindery.Labels.Compose("signs-look-for", [("signs", Phrase.Join("; ", signs.Select(h => bindery.Link(h.Id)))), .. Numbers(bindery)]);

    private static Phrase Strong(Bindery bindery, SignalWord word) => Phrase.Of(new Inline.Strong(Phrase.Of(HazardPanels.Signal(bindery, word)))) + Phrase.Of(" ");

    private static Phrase Line(Bindery bindery, Hazard hazard) => Strong(bindery, hazard.Word) + bindery.Link(hazard.Id) + Phrase.Of(". ") + HazardPanels.StopWords(bindery, hazard);
}
