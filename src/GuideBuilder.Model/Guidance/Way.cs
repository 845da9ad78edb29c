namespace GuideBuilder.Model;

/// <summary>One arrangement that would meet the wish: what it is, and what it trades (CommonMark).</summary>
public sealed record Way(RuleHead Head, LocalText About, LocalText Trades, LocalText WhenRuledOut) : Rule(Head)
{
    /// <summary>On which condition, besides its own, it meets the wish. A way that applies but does not meet the wish is compared with the others, and followed only where nothing else is left.</summary>
    public Condition MeetsWishIf { get; init; } = Condition.Always;
}
