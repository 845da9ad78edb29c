using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Ground;
using GuideBuilder.Planning.SupplyNumbers;

namespace GuideBuilder.Planning.Siting;

/// <summary>
/// Holds the new place against the rules of the table networks (rows siting-…). A rule asks one question or fact, for some areas or nations or for all. Of its bounds the worst that the answer crosses counts:
/// conflicts-under, ask-under, ask-over, conflicts-over for a quantity, conflicts-if and ask-if for options.
/// </summary>
public static class SitingRules
{
    /// <summary>The verdict on each rule that holds for this home, in the order of the table. A question that was not asked leaves its rule out; an answer that is not known, or of another dimension, is NotKnown. While nobody knows whose network it is, every operator's own rules hold, as something to ask.</summary>
    public static ImmutableArray<SitingVerdict> Of(Lookup lookup, Tables tables)
    {
        var inputs = new Inputs(lookup, tables);
        var area = SupplyFacts.Read(inputs)?.Area ?? "";
        ImmutableArray<SitingVerdict> all =
        [
            .. from rule in GroundFigures.From(tables).Group("siting-")
               where (area.Length == 0 || IsFor(rule, "areas", area)) && IsFor(rule, "nations", inputs.Option("home.nation") ?? "")
               let asks = rule.Words("asks")
               let given = lookup(asks)
               where given.Standing != Standing.NotAsked
               let counts = Counts(rule, lookup)
               where counts != Truth.Fails
               let said = Said(rule, lookup)
               select new SitingVerdict(rule, asks, given.Value, said is null ? Soften(rule, area, Judge(rule, given.Value, counts)) : AsSaid(said, given.Value)) { OperatorSays = said, OperatorKnown = area.Length > 0 },
        ];

        // What the operator has said stands once, in place of all the rules that it outranks.
        return [.. all.DistinctBy(v => v.OperatorSays is null ? v.Rule.Id : v.Rule.Words("outranked-by"), StringComparer.Ordinal)];
    }

    /// <summary>The questions and facts that the rules ask, each once.</summary>
    public static IEnumerable<string> Names(Tables tables) =>
        GroundFigures.From(tables).Group("siting-").SelectMany(r => new[] { r.Words("asks"), r.Words("only-where"), r.Words("outranked-by") }).Where(n => n.Length > 0).Distinct(StringComparer.Ordinal);

    private static bool IsFor(TableRow rule, string cell, string id) => rule.List(cell) is var ids && (ids.Length == 0 || ids.Contains(id));

    // Whose network it is nobody knows: what one operator has in print is then something to ask, whether it would be met or not.
    private static SitingOutcome Soften(TableRow rule, string area, SitingOutcome outcome) =>
        outcome != SitingOutcome.NotKnown && area.Length == 0 && rule.List("areas").Length > 0 ? SitingOutcome.Ask : outcome;

    private static Value? Said(TableRow rule, Lookup lookup) =>
        rule.Words("outranked-by") is { Length: > 0 } name && lookup(name) is { Standing: Standing.Known } answer ? answer.Value : null;

    private static SitingOutcome AsSaid(Value said, Value? value) => (said, value) switch
    {
        (Value.Amount asked, Value.Amount given) when asked.Quantity.Unit.Dimension == given.Quantity.Unit.Dimension => asked.Quantity.Against(given.Quantity) == 0 ? SitingOutcome.Meets : SitingOutcome.Conflicts,
        _ => SitingOutcome.NotKnown,
    };

    private static Truth Counts(TableRow rule, Lookup lookup)
    {
        if (rule.Words("only-where") is not { Length: > 0 } name)
        {
            return Truth.Holds;
        }

        return lookup(name) switch
        {
            { Standing: Standing.Known } given => rule.List("is").Any(Options(given.Value).Contains) ? Truth.Holds : Truth.Fails,
            { Standing: Standing.Unknown } => Truth.Open,
            _ => Truth.Fails,
        };
    }

    private static SitingOutcome Judge(TableRow rule, Value? value, Truth counts)
    {
        var outcome = value switch
        {
            Value.Amount amount => OfAmount(rule, amount.Quantity),
            Value.Option or Value.Several => OfOptions(rule, Options(value)),
            _ => SitingOutcome.NotKnown,
        };
        return counts == Truth.Open && outcome != SitingOutcome.Meets ? SitingOutcome.NotKnown : outcome;
    }

    private static SitingOutcome OfAmount(TableRow rule, Quantity quantity)
    {
        bool Beyond(string cell, int sign) => rule.Find(cell) is { } bound && quantity.Against(bound) == sign;
        string[] bounds = ["conflicts-under", "ask-under", "ask-over", "conflicts-over"];
        return bounds.Any(b => rule.Find(b) is { } bound && bound.Unit.Dimension != quantity.Unit.Dimension) ? SitingOutcome.NotKnown
            : Beyond("conflicts-under", -1) || Beyond("conflicts-over", 1) ? SitingOutcome.Conflicts
            : Beyond("ask-under", -1) || Beyond("ask-over", 1) ? SitingOutcome.Ask
            : SitingOutcome.Meets;
    }

    private static SitingOutcome OfOptions(TableRow rule, ImmutableArray<string> options) =>
        rule.List("conflicts-if").Any(options.Contains) ? SitingOutcome.Conflicts
        : rule.List("ask-if").Any(options.Contains) ? SitingOutcome.Ask
        : SitingOutcome.Meets;

    private static ImmutableArray<string> Options(Value? value) => value switch
    {
        Value.Option option => [option.Id],
        Value.Several several => several.Ids,
        _ => [],
    };
}
