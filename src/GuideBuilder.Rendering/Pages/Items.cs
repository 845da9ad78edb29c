using GuideBuilder.Rendering.Markup;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Finds the entries of the guidance, and what became of them in the plan, by id.</summary>
internal sealed class Items
{
    private readonly FrozenDictionary<string, Rule> _rules;
    private readonly FrozenDictionary<string, ItemState> _states;
    private readonly FrozenDictionary<string, Because> _reasons;
    private readonly FrozenDictionary<string, PlannedStep> _steps;
    private readonly FrozenDictionary<string, PlannedCost> _costs;
    private readonly FrozenSet<string> _shared;

    internal Items(Plan plan, Guidance guidance)
    {
        var planned = Planned(plan).ToList();
        _rules = KnownIds.Rules(guidance).ToFrozenDictionary(r => r.Id, StringComparer.Ordinal);
        _states = planned.ToFrozenDictionary(p => p.Id, p => p.State, StringComparer.Ordinal);
        _reasons = planned.ToFrozenDictionary(p => p.Id, p => p.Because, StringComparer.Ordinal);
        _steps = plan.Steps.ToFrozenDictionary(s => s.Step.Item.Id, StringComparer.Ordinal);
        _costs = plan.Costs.ToFrozenDictionary(c => c.Cost.Item.Id, StringComparer.Ordinal);
        InOrder = [.. planned.Select(p => p.Id)];
        _shared = planned.GroupBy(p => p.Because.Reason.Words, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key).ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The ids of all that the plan judged, kind after kind.</summary>
    internal ImmutableArray<string> InOrder { get; }

    /// <summary>The entry of that id.</summary>
    internal Rule? Find(string id) => _rules.GetValueOrDefault(id);

    /// <summary>The step of that id.</summary>
    internal PlannedStep? Step(string id) => _steps.GetValueOrDefault(id);

    /// <summary>The cost line of that id.</summary>
    internal PlannedCost? Cost(string id) => _costs.GetValueOrDefault(id);

    /// <summary>What became of an item; one that the plan does not hold is ruled out.</summary>
    internal ItemState State(string id) => _states.GetValueOrDefault(id, ItemState.RuledOut);

    /// <summary>Why an item is in the plan or left out.</summary>
    internal Because? Reason(string id) => _reasons.GetValueOrDefault(id);

    /// <summary>Whether other items give the same reason in the same words.</summary>
    internal bool SharesReason(Because because) => _shared.Contains(because.Reason.Words);

    /// <summary>Whether an item is settled or may apply.</summary>
    internal bool IsPresent(string id) => State(id) != ItemState.RuledOut;

    /// <summary>Every id of an entry.</summary>
    internal IEnumerable<string> Ids => _rules.Keys;

    /// <summary>Every id of a step.</summary>
    internal IEnumerable<string> StepIds => _steps.Keys;

    /// <summary>Every id of a cost line.</summary>
    internal IEnumerable<string> CostIds => _costs.Keys;

    private static IEnumerable<(string Id, ItemState State, Because Because)> Planned(Plan plan) =>
    [
        .. plan.Parties.Select(One), .. plan.Ways.Select(w => One(w.Way)), .. plan.Steps.Select(s => One(s.Step)), .. plan.Costs.Select(c => One(c.Cost)),
        .. plan.Hazards.Select(h => One(h.Hazard)), .. plan.Consents.Select(One), .. plan.Clocks.Select(One),
    ];

    private static (string Id, ItemState State, Because Because) One<T>(Planned<T> planned)
        where T : Rule => (planned.Item.Id, planned.State, planned.Because);
}
