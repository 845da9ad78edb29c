namespace GuideBuilder.Model;

/// <summary>Somebody who takes part: what they own, do, will not do and charge, how to reach them and what to have ready (CommonMark), and which days they work.</summary>
public sealed record Party(
    RuleHead Head,
    LocalText Owns,
    LocalText Does,
    LocalText WillNotDo,
    LocalText Charges,
    LocalText HowToReach,
    LocalText HaveReady,
    ImmutableArray<IsoDayOfWeek> Works,
    bool KeepsHolidays) : Rule(Head)
{
    /// <summary>What comes back of a payment if the household stops, and how long it may change its mind.</summary>
    public LocalText IfYouStop { get; init; } = LocalText.Empty;

    /// <summary>The id of the household itself; its steps are duties.</summary>
    public const string Household = "household";

    /// <summary>Whether it is a firm for hire, which may bind handbooks under its own name; networks, suppliers, councils and neighbours are not.</summary>
    public bool IsForHire { get; init; }
}
