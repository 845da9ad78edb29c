namespace GuideBuilder.Planning.Ground;

/// <summary>A part of the digging that may fall to somebody else.</summary>
public enum DigPart
{
    /// <summary>Opening the ground for the hole and the trench, away from any cable.</summary>
    Ground,

    /// <summary>Laying the cable bare, and all digging from the first sign of it.</summary>
    Uncovering,

    /// <summary>Filling again, after the crew has released the hole.</summary>
    Filling,
}

/// <summary>Who digs a part.</summary>
public enum Digger
{
    /// <summary>Not known; until it is, nobody of the household.</summary>
    Ask,

    /// <summary>The household.</summary>
    Household,

    /// <summary>A contractor of the household.</summary>
    Contractor,

    /// <summary>A contractor trained to uncover cables.</summary>
    TrainedContractor,

    /// <summary>The network operator or those it sends, with its own permits.</summary>
    Operator,
}

/// <summary>Who may dig what. A public street and a neighbour's land are never the household's, and neither is a cable unless the operator's letter and the kind of cable both allow it. Source: New Roads and Street Works Act 1991, section 50; HSG47.</summary>
public static class MayDig
{
    /// <summary>Who digs that part, by the answers and the fact household-may-uncover.</summary>
    public static Digger For(DigPart part, Lookup lookup) => part switch
    {
        DigPart.Uncovering => Uncovers(lookup),
        DigPart.Ground => OnLand(lookup, By(Option(lookup, "ground.who-digs"))),
        DigPart.Filling => OnLand(lookup, By(Option(lookup, "operator.who-fills"))),
        _ => throw new UnreachableException(),
    };

    private static Digger OnLand(Lookup lookup, Digger wished) => Option(lookup, "ground.joint-place") switch
    {
        "own-land" => wished,
        "footway" or "road" or "neighbour-land" => Digger.Operator,
        _ => wished == Digger.Operator ? Digger.Operator : Digger.Ask,
    };

    private static Digger Uncovers(Lookup lookup) => (OnLand(lookup, Digger.Household), Option(lookup, "household-may-uncover"), Option(lookup, "ground.who-uncovers")) switch
    {
        (Digger.Household, "yes", "household") => Digger.Household,
        (not Digger.Operator, _, "trained-contractor") => Digger.TrainedContractor,
        _ => Digger.Operator,
    };

    private static Digger By(string? option) => option switch
    {
        "household" => Digger.Household,
        "contractor" => Digger.Contractor,
        "operator" => Digger.Operator,
        _ => Digger.Ask,
    };

    private static string? Option(Lookup lookup, string name) => (lookup(name).Value as Value.Option)?.Id;
}
