namespace GuideBuilder.Planning.Derived;

/// <summary>A calculator as conditions and costs know it: its name, the inputs it cannot do without, those it uses where they were asked, and its arithmetic over known inputs (null where they lie outside its range).</summary>
internal sealed record Calculator(string Name, ImmutableArray<string> Needs, ImmutableArray<string> MayUse, Func<Inputs, Value?> Work)
{
    /// <summary>Whether it is worked as soon as the needed inputs are known, because a known one may settle it whatever the others are. It then gives null itself while it is not settled.</summary>
    public bool DecidesEarly { get; init; }

    /// <summary>Its result: not asked if a needed input is not, unknown if any input is that could still change it.</summary>
    public Given.Derived Of(Lookup lookup, Tables tables)
    {
        var leaves = Needs.Concat(MayUse).Select(name => Read(name, lookup)).ToImmutableArray();
        var needed = leaves.Take(Needs.Length).Select(l => l.Truth).All();
        var truth = new[] { needed, OfOptional(leaves) }.All();
        var early = DecidesEarly && needed == Truth.Holds;
        var value = truth == Truth.Holds || early ? Work(new Inputs(lookup, tables)) : null;
        var standing = truth == Truth.Fails ? Standing.NotAsked : value is null ? Standing.Unknown : Standing.Known;
        return new(Name, standing, value, Reason(value is null ? truth : Truth.Holds, leaves));
    }

    private Truth OfOptional(ImmutableArray<Leaf> leaves) => leaves.Skip(Needs.Length).Any(l => l.Truth == Truth.Open) ? Truth.Open : Truth.Holds;

    private Because Reason(Truth truth, ImmutableArray<Leaf> leaves) =>
        new("calculator", Name, Place.None, truth, truth == Truth.Holds ? [.. leaves.Where(l => l.Truth != Truth.Open)] : [.. leaves.Where(l => l.Truth == truth)], LocalText.Empty, []);

    private static Leaf Read(string name, Lookup lookup)
    {
        var given = lookup(name);
        return new(new(name, new Comparison.Within(null, null), Place.None), given, OfStanding(given.Standing));
    }

    private static Truth OfStanding(Standing standing) => standing switch
    {
        Standing.Known => Truth.Holds,
        Standing.Unknown => Truth.Open,
        _ => Truth.Fails,
    };
}
