namespace GuideBuilder.Rendering.Markup;

/// <summary>Every id that a link may name: items, pages, letters, terms, sources, and questions by section and id.</summary>
internal sealed class KnownIds
{
    private readonly FrozenSet<string> _ids;

    internal KnownIds(IEnumerable<string> ids) => _ids = ids.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Those of the guidance.</summary>
    internal static KnownIds Of(Guidance guidance) => new(
    [
        .. Rules(guidance).Select(r => r.Id),
        .. guidance.Pages.Select(p => p.Id),
        .. guidance.Letters.Select(l => l.Id),
        .. guidance.Terms.Select(t => t.Id),
        .. guidance.Sources.Select(s => s.Id),
        .. guidance.Questions.Select(q => q.Name),
    ]);

    /// <summary>Every rule of the guidance, kind after kind, in written order.</summary>
    internal static IEnumerable<Rule> Rules(Guidance guidance) =>
    [
        .. guidance.Facts, .. guidance.Parties, .. guidance.Ways, .. guidance.Steps, .. guidance.Costs, .. guidance.Hazards, .. guidance.Consents, .. guidance.Clocks,
    ];

    /// <summary>Whether something has that id.</summary>
    internal bool Has(string id) => _ids.Contains(id);

    /// <summary>The id nearest to a wrong one.</summary>
    internal string Nearest(string id) => Rendering.Nearest.To(id, _ids);
}
