namespace GuideBuilder.Model;

/// <summary>How the new place stands to one rule (a row siting-… of the table networks): its question or fact, what it is worth (null when not known), and the verdict. The operator alone accepts a place.</summary>
public sealed record SitingVerdict(TableRow Rule, string Asks, Value? Worth, SitingOutcome Outcome)
{
    /// <summary>What the operator has answered on the same thing, which then stands instead of the rule's own bounds; null while it has not.</summary>
    public Value? OperatorSays { get; init; }

    /// <summary>Whether it is known whose network this is; while it is not, a rule of one operator holds only if it is theirs.</summary>
    public bool OperatorKnown { get; init; } = true;
}

/// <summary>How a place stands to a rule: a closed set, without a word for accepted.</summary>
public enum SitingOutcome
{
    /// <summary>Within the rule as far as anybody can tell without the operator.</summary>
    Meets,

    /// <summary>Nobody has said.</summary>
    NotKnown,

    /// <summary>Ask the operator.</summary>
    Ask,

    /// <summary>Against the rule: propose another place, or ask for an exception.</summary>
    Conflicts,
}
