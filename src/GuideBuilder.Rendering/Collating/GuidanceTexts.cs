using GuideBuilder.Rendering.Markup;

namespace GuideBuilder.Rendering.Collating;

/// <summary>A text of the guidance: of what kind of entry, which entry, the words, and whether what it orders falls to the household.</summary>
internal sealed record GuidanceText(string Kind, string Id, LocalText Text, bool IsToHousehold);

/// <summary>Every text that a reader may see, in the order of the guidance.</summary>
internal static class GuidanceTexts
{
    /// <summary>The texts of a guidance that are not empty.</summary>
    internal static IEnumerable<GuidanceText> Of(Guidance guidance) => All(guidance).Where(t => !t.Text.IsEmpty);

    /// <summary>The kind of the texts that an imprint brings.</summary>
    internal const string Imprint = "imprint";

    /// <summary>The kind of the texts of letters.</summary>
    internal const string Letter = "letter";

    private static IEnumerable<GuidanceText> All(Guidance guidance) =>
    [
        .. KnownIds.Rules(guidance).SelectMany(Rule),
        .. guidance.Terms.SelectMany(t => Said("term", t.Id, true, [t.Word, t.Meaning, .. t.Also])),
        .. guidance.Questions.SelectMany(q => Said("question", q.Name, true, [q.Label, q.Wording, q.HowToFindOut, q.WhatItDecides, q.WhoCanTell, .. q.Options.Select(o => o.Wording)])),
        .. guidance.Meetings.SelectMany(m => Said("meeting", m.Id, true, [m.Title, .. m.Mishaps.SelectMany(x => new[] { x.Title, x.WhatToDo, x.WhoPays })])),
        .. guidance.Labels.Values.OrderBy(l => l.Id, StringComparer.Ordinal).SelectMany(l => Said("label", l.Id, true, [l.One])),
        .. guidance.Pages.SelectMany(p => Said("page", p.Id, true, [p.Text])),
        .. guidance.Letters.SelectMany(l => Said(Letter, l.Id, false, [l.Text])),
        .. guidance.Imprint is { } imprint ? Said(Imprint, imprint.Name.Words, true, [imprint.Opening, imprint.Closing, imprint.Terms]) : [],
    ];

    private static IEnumerable<GuidanceText> Rule(Rule rule) => Said(rule.Head.Kind, rule.Id, IsToHousehold(rule), [rule.Title, rule.Head.Because, .. Words(rule)])
        .Concat(rule is Hazard hazard ? hazard.Controls.Select(c => new GuidanceText(rule.Head.Kind, rule.Id, c.What, c.By == Party.Household)) : []);

    private static ImmutableArray<LocalText> Words(Rule rule) => rule switch
    {
        Step step => [step.About, step.HowTo, step.DoneWhen, step.IfItGoesWrong, step.WhoInstead],
        Hazard hazard => [hazard.Cause, hazard.Harm, hazard.People, hazard.WhenItArises, hazard.StopWhen],
        Party party => [party.Owns, party.Does, party.WillNotDo, party.Charges, party.HowToReach, party.HaveReady],
        Way way => [way.About, way.Trades, way.WhenRuledOut],
        Cost cost => [cost.About],
        Consent consent => [consent.WhoGives, consent.WhenNeeded, consent.About],
        Clock clock => [clock.Owes, clock.WhatToWrite],
        _ => [],
    };

    // What a step of another party orders, it orders that party.
    private static bool IsToHousehold(Rule rule) => rule is not Step step || step.IsDuty;

    private static IEnumerable<GuidanceText> Said(string kind, string id, bool isToHousehold, IEnumerable<LocalText> texts) => texts.Select(t => new GuidanceText(kind, id, t, isToHousehold));
}
