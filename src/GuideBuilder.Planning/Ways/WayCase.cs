using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Derived;
using GuideBuilder.Planning.Steps;
using GuideBuilder.Planning.Worlds;

namespace GuideBuilder.Planning.Ways;

/// <summary>One way under consideration: what is known of the home if it takes that way, and the same in the assumed world, where everything is definite.</summary>
internal sealed record WayCase(Way Way, Facts Facts, Facts World, Guidance Guidance, Occasion Occasion, Nation Nation)
{
    /// <summary>Answers and facts as they are known.</summary>
    public Lookup Lookup => name => Facts[name];

    /// <summary>Answers and facts as the assumed world has them.</summary>
    public Lookup InWorld => name => World[name];

    /// <summary>As they are known, for calculators: a name that this guidance does not have counts as not asked.</summary>
    public Lookup KnownOrAbsent => name => Derivation.FindIn(Facts, name);

    /// <summary>As the assumed world has them, for calculators.</summary>
    public Lookup InWorldOrAbsent => name => Derivation.FindIn(World, name);

    /// <summary>The rules of the derived facts, by id.</summary>
    public FrozenDictionary<string, FactRule> Rules { get; } = Guidance.Facts.ToFrozenDictionary(f => f.Id, StringComparer.Ordinal);

    /// <summary>Every step of the guidance, by id.</summary>
    public FrozenDictionary<string, Step> StepsById { get; } = Guidance.Steps.ToFrozenDictionary(s => s.Id, StringComparer.Ordinal);

    /// <summary>Where prices are asked.</summary>
    public Market Market => new(Nation, Known.Option(World.Answers, "home.region"), Guidance.Tables);

    /// <summary>Whether an entry applies in the assumed world.</summary>
    public bool IsInWorld(Rule rule) => Judge.Of(rule.Head.AppliesIf, InWorld).Truth == Truth.Holds;

    /// <summary>The case of that way, and what deriving its facts brought to light.</summary>
    public static (WayCase Case, ImmutableArray<Fault> Faults) Of(Way way, AnswerSet answers, World world, Guidance guidance, Occasion occasion, Nation nation)
    {
        var known = FactDeriver.Under(answers, guidance, way);
        var assumed = FactDeriver.Under(world.Answers, guidance, way);
        var here = guidance with { Steps = [.. guidance.Steps.Select(s => WorkDays.In(Waiting(s, assumed.Facts), assumed.Facts))] };
        return (new(way, known.Facts, assumed.Facts, here, occasion, nation), [.. known.Faults, .. assumed.Faults]);
    }

    // With the links whose condition does not fail.
    private static Step Waiting(Step step, Facts facts) => step.After.All(l => l.If == Condition.Always) ? step : step with
    {
        After = [.. step.After.Where(l => Judge.Of(l.If, name => facts[name]).Truth != Truth.Fails)],
    };
}
