using GuideBuilder.Planning.Derived;

namespace GuideBuilder.Planning.Withholding;

/// <summary>What an edition knows of a home of which it may not print everything, and which items would show what it does not know.</summary>
internal sealed class KeptBack
{
    private readonly Guidance _guidance;
    private readonly ImmutableArray<DataClass> _may;

    /// <summary>For readers who are told these answers, of a plan that was made from all of them.</summary>
    public KeptBack(Plan plan, AnswerSet told, Guidance guidance)
    {
        _guidance = guidance;
        _may = Disclosure.Most(plan.Occasion.Edition);
        Facts = FactDeriver.Under(told, guidance, plan.ChosenWay.Item).Facts.With([plan.Facts.Derived[CalculatedFact.OffSupplyHours], plan.Facts.Derived[CalculatedFact.Months]]);
        Before = FactDeriver.Derive(told, guidance).Value ?? Facts;
        Items = Ids(plan.Parties.Select(p => p.Item)).Concat(Ids(plan.Steps.Select(s => s.Step.Item))).Concat(Ids(plan.Costs.Select(c => c.Cost.Item)))
            .Concat(Ids(plan.Hazards.Select(h => h.Hazard.Item))).Concat(Ids(plan.Consents.Select(c => c.Item))).Concat(Ids(plan.Clocks.Select(c => c.Item)))
            .ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The home as it is told, under the chosen way.</summary>
    public Facts Facts { get; }

    /// <summary>The home as it is told, before a way is taken.</summary>
    public Facts Before { get; }

    /// <summary>The ids of the items that wait for an answer which is not told: they may apply, whatever the answer is.</summary>
    public FrozenSet<string> Items { get; }

    /// <summary>Whether the answer to a question is told.</summary>
    public bool IsTold(Question question) => _may.Contains(question.Data);

    /// <summary>An item as it is told: that it may apply where an answer that is not told decides, else as it is.</summary>
    public Planned<T> Tell<T>(Planned<T> real)
        where T : Rule
    {
        var told = Planning.Items.Plan(real.Item, name => Facts[name]);
        return told.State == real.State || Items.Contains(real.Item.Head.Id) ? told : real with { Because = Tell(real.Because) };
    }

    /// <summary>A reason without the leaves that are not told.</summary>
    public Because Tell(Because because) => because with { Deciding = [.. because.Deciding.Where(l => IsTold(l.Given))] };

    private bool IsTold(Given given) => given switch
    {
        Given.Answered answered => IsTold(answered.Question),
        Given.Derived derived => derived.Because.Deciding.All(l => IsTold(l.Given)),
        _ => true,
    };

    private IEnumerable<string> Ids<T>(IEnumerable<T> rules)
        where T : Rule => rules.Select(r => Planning.Items.Plan(r, name => Facts[name])).Where(p => p.State == ItemState.Open && p.Because.Unsettled.Any(q => !IsTold(q))).Select(p => p.Item.Head.Id);

    /// <summary>The hazards of the guidance that these are, with those among them that are not told to be in it or not, in guidance order.</summary>
    public ImmutableArray<string> HazardsWith(ImmutableArray<string> hazards) => [.. _guidance.Hazards.Select(h => h.Id).Where(id => Items.Contains(id) || hazards.Contains(id))];
}
