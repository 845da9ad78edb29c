using System.Text.RegularExpressions;
using GuideBuilder.Rendering.Markup;

namespace GuideBuilder.Rendering.Collating;

/// <summary>Which entries of the guidance anything names.</summary>
internal static partial class Uses
{
    /// <summary>The entries that something should name, by kind, id and place. A hazard stands in the register and a letter among the letters without being named.</summary>
    internal static IEnumerable<(string Kind, string Id, Place Place)> Items(Guidance guidance) =>
    [
        .. guidance.Questions.Select(q => ("question", q.Name, q.Place)),
        .. guidance.Facts.Select(f => ("fact", f.Id, f.Head.Place)),
        .. guidance.Tables.Prices.Select(p => ("price", p.Id, p.Place)),
        .. guidance.Sources.Select(s => ("source", s.Id, s.Place)),
        .. guidance.Terms.Select(t => ("term", t.Id, t.Place)),
    ];

    /// <summary>Every id that a condition, a reference, a link or a template names, and every term that a text says.</summary>
    internal static HashSet<string> Of(Guidance guidance, List<GuidanceText> texts)
    {
        var words = string.Join('\n', texts.Where(t => t.Kind != "term").Select(t => t.Text.Words)
            .Concat(guidance.Nations.SelectMany(n => n.Bodies.Values).Select(b => b.Words)).Concat(guidance.Tables.Rows.SelectMany(r => r.Cells.Values).Select(c => c.Words)));
        return new(
        [
            .. KnownIds.Rules(guidance).SelectMany(Names),
            .. guidance.Questions.SelectMany(q => q.AskIf.Names.Concat(q.WeightsIf.SelectMany(w => w.When.Names)).Concat(q.Basis.Sources)),
            .. guidance.Tables.Prices.SelectMany(p => p.Basis.Sources), .. guidance.Tables.Rows.SelectMany(r => r.Basis.Sources), .. guidance.Tables.Vat.SelectMany(v => v.Basis.Sources),
            .. guidance.Tables.Indexes.SelectMany(i => i.Basis.Sources), .. guidance.Tables.Regions.SelectMany(r => r.Basis.Sources), .. guidance.Tables.Holidays.SelectMany(h => h.Basis.Sources),
            .. guidance.Terms.SelectMany(t => t.Sources), .. AskedByProgram.All,
            .. guidance.Tables.Rows.SelectMany(r => r.Cells.Values.Select(c => c.Words).Concat(r.When?.Names ?? [])),
            .. guidance.Meetings.SelectMany(m => m.Crews.Select(c => c.Or).OfType<string>().Concat(m.Hold is { } hold ? [.. hold.If.Names, .. hold.Answered] : [])),
            .. guidance.Meetings.SelectMany(m => m.Basis.Sources), .. guidance.Nations.SelectMany(n => n.Numbers).Select(n => n.Source),
            .. guidance.Disclosures.Select(d => d.AfterConsent).OfType<string>(),
            .. Named().Matches(words).Select(m => m.Groups[1].Value),
            .. guidance.Terms.Where(t => t.Also.Prepend(t.Word).Any(w => words.Contains(w.Words, StringComparison.OrdinalIgnoreCase))).Select(t => t.Id),
        ], StringComparer.Ordinal);
    }

    private static IEnumerable<string> Names(Rule rule) => rule.Head.AppliesIf.Names.Concat(rule.Head.Basis.Sources).Concat(rule switch
    {
        FactRule fact => fact.Rows.SelectMany(r => r.When.Names),
        Step step => [.. step.Costs, .. step.Hazards, .. step.Needs, .. Optional(step.Letter), .. step.MayHappen.SelectMany(m => m.AppliesIf.Names.Concat(m.Costs).Concat(m.Basis.Sources)), .. step.After.SelectMany(a => Optional(a.Or)), .. step.NoLaterThan.SelectMany(l => Optional(l.Or))],
        Way way => way.MeetsWishIf.Names,
        Cost cost => [cost.Price, .. Optional(cost.Quantity)],
        Clock clock => Optional(clock.Letter),
        _ => [],
    });

    private static IEnumerable<string> Optional(string? id) => id is null ? [] : [id];

    // A link, or a name in quotation marks inside a template.
    [GeneratedRegex(@"(?:see:|"")([a-z][a-z0-9.-]*)")]
    private static partial Regex Named();
}
