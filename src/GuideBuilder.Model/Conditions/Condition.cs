namespace GuideBuilder.Model;

/// <summary>A condition as written in the guidance: a closed set. Every name, option and unit in it was checked when it was read.</summary>
public abstract record Condition(Place Place)
{
    /// <summary>Holds when each part holds; an empty one holds.</summary>
    public sealed record AllOf(ImmutableArray<Condition> Parts, Place Place) : Condition(Place);

    /// <summary>Holds when a part holds; an empty one fails.</summary>
    public sealed record AnyOf(ImmutableArray<Condition> Parts, Place Place) : Condition(Place);

    /// <summary>Holds when no part holds; an empty one holds.</summary>
    public sealed record NoneOf(ImmutableArray<Condition> Parts, Place Place) : Condition(Place);

    /// <summary>Asks something of one named answer or fact. Open when it is unknown, fails when it was not asked.</summary>
    public sealed record Asks(string Name, Comparison Comparison, Place Place) : Condition(Place);

    /// <summary>The condition of an entry that names none: always holds.</summary>
    public static Condition Always { get; } = new AllOf([], Place.None);

    /// <summary>Every name the condition asks about, in written order, with repeats.</summary>
    public IEnumerable<string> Names => this switch
    {
        AllOf all => all.Parts.SelectMany(p => p.Names),
        AnyOf any => any.Parts.SelectMany(p => p.Names),
        NoneOf none => none.Parts.SelectMany(p => p.Names),
        Asks asks => [asks.Name],
        _ => throw new UnreachableException(),
    };
}
