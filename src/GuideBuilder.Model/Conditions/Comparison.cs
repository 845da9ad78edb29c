namespace GuideBuilder.Model;

/// <summary>What a comparison asks of a value: a closed set.</summary>
public abstract record Comparison
{
    private Comparison()
    {
    }

    /// <summary>The option is one of these; of several options, at least one is among these, and <c>none</c> among these is met by no option at all.</summary>
    public sealed record IsOneOf(ImmutableArray<string> Options) : Comparison;

    /// <summary>The quantity or date lies between the limits; a missing limit does not bind; an end counts unless it is open.</summary>
    public sealed record Within(Limit? From, Limit? To) : Comparison;

    /// <summary>Truth of the comparison for one known value. A value of a kind that the static check does not allow is our own mistake and throws.</summary>
    public Truth Of(Value value) => (this, value) switch
    {
        (IsOneOf one, Value.Option option) => Kleene.Of(one.Options.Contains(option.Id)),
        (IsOneOf one, Value.Several several) => Kleene.Of(several.Ids.IsEmpty ? one.Options.Contains(Value.Several.None) : several.Ids.Any(one.Options.Contains)),
        (Within within, Value.Amount amount) => Kleene.Of(within.Holds(amount.Quantity)),
        (Within within, Value.Spread spread) => within.Holds(spread),
        (Within within, Value.Day day) => Kleene.Of(within.Holds(day.Date)),
        _ => throw new UnreachableException($"{GetType().Name} cannot be asked of {value.GetType().Name}"),
    };
}
