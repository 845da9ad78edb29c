using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>What the cover answers: what is wished, what it comes to, where you are, what to do next.</summary>
internal static class CoverBlocks
{
    private const int ActionsShown = 3;

    private const string Moves = "wish-moves";

    private static readonly ImmutableArray<(string Label, string Answer)> WishAnswers = [("wish-detail", "wish.detail"), (Moves, "wish.moves"), ("wish-reason", "wish.reason")];

    private static readonly ImmutableArray<string> Emergencies = ["network-emergency", "emergency-services", "gas-emergency", "supplier-meter-emergency", "independent-network-emergency"];

    /// <summary>The wish in one paragraph: the household's own words, what must move and why, and the way that the book follows.</summary>
    internal static ImmutableArray<Block> Wish(Bindery bindery)
    {
        var way = bindery.Plan.ChosenWay;
        var follows = bindery.Labels.Compose(way.State == ItemState.Settled ? "wish-settled" : "wish-open", ("way", bindery.Link(way.Item.Id)));
        var said = WishAnswers.Select(w => (w.Label, Answer: bindery.Plan.Answers.ByName.TryGetValue(w.Answer, out var given) ? bindery.Answers.Of(given) : null))
            .Where(w => w.Answer is not null)
            .Select(w => Phrase.Of(w.Label == Moves && MovesNothing(bindery) ? bindery.Say("wish-moves-nothing") : bindery.Say(w.Label, ("answer", w.Label == "wish-detail" ? w.Answer!.TrimEnd('.') : Inside(w.Answer!)))));
        return [new Block.Prose(Phrase.Join(" ", said.Append(follows)))];
    }

    /// <summary>Whether the household has said that nothing is to move.</summary>
    internal static bool MovesNothing(Bindery bindery) =>
        bindery.Plan.Answers.ByName.TryGetValue("wish.moves", out var moves) && moves is { Standing: Standing.Known, Value: Value.Several { Ids.IsEmpty: true } };

    /// <summary>The next three steps of the household, else of anybody, with dates and a letter each.</summary>
    internal static ImmutableArray<Block> NextActions(Bindery bindery)
    {
        var soon = bindery.Plan.Whereabouts.Next.Select(n => n.Step).ToList();
        var ahead = Make.Ahead(bindery.Plan).OrderBy(s => soon.IndexOf(s.Step.Item.Id) is >= 0 and var i ? i : soon.Count).ToList();
        var own = ahead.Where(s => s.Step.Item.IsDuty).ToList();
        var next = (own.Count > 0 ? own : ahead).Take(ActionsShown);
        return [.. PowerBack(bindery), .. next.Select(s => Action(bindery, s))];
    }

    // A house that has been left without supply comes before everything else.
    private static IEnumerable<Block> PowerBack(Bindery bindery) => bindery.Plan.Whereabouts.DarkSince is not { } since ? [] :
    [
        new Block.Entry(
            null,
            1,
            Phrase.Of(bindery.Say("power-back")),
            [new Block.Prose(bindery.Labels.Compose("power-back-words", ("off-supply", PageLink(bindery, "off-supply")), ("wrong", PageLink(bindery, "if-it-goes-wrong"))))],
            [Sides.Line(bindery, "left-when", bindery.Labels.Compose("power-back-when", ("date", bindery.Dates.Say(since)))), .. Sides.LetterOf(bindery, "letter-missed-visit")]),
    ];

    private static Phrase PageLink(Bindery bindery, string id) =>
        bindery.Outline.FirstOrDefault(l => l.Id == id) is { } line ? Bindery.Link(id, line.Title) : Phrase.Empty;

    /// <summary>The numbers to ring when it is urgent.</summary>
    internal static ImmutableArray<Block> EmergencyNumbers(Bindery bindery)
    {
        var bodies = bindery.Plan.Nation.Bodies;
        return Make.Grid(bindery, "emergency-caption", ["column-what", "column-call"], Emergencies.Where(bodies.ContainsKey).Select(b => Make.Row(null, Phrase.Of(bindery.Say($"for-{b}")), Phrase.Of(new Inline.Strong(bindery.Words(bodies[b]))))));
    }

    // The wording of an option begins small inside a sentence; a capital that stands alone, the first person, stays.
    private static string Inside(string answers) =>
        string.Join("; ", answers.Split("; ").Select(a => a is [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..] ? char.ToLowerInvariant(a[0]) + a[1..] : a));

    private static Block.Entry Action(Bindery bindery, PlannedStep step) =>
        new(null, 1, bindery.Link(step.Step.Item.Id), bindery.Read(step.Step.Item.About), [Sides.WhenAtLatest(bindery, step), .. Sides.Letter(bindery, step.Step.Item), Sides.Reason(bindery, step.Step.Because)]);

    /// <summary>A letter's title as a link.</summary>
    internal static Phrase LetterLink(Bindery bindery, string id) =>
        Bindery.Link(id, bindery.Guidance.Letters.Where(l => l.Id == id).Select(l => bindery.Words(PageTitle.Said(l))).FirstOrDefault(Phrase.Of(id)));
}
