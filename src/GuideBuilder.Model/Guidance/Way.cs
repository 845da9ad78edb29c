namespace GuideBuilder.Model;

/// <summary>One arrangement that would meet the wish: what it is, and what it trades (CommonMark).</summary>
public sealed record Way(RuleHead Head, LocalText About, LocalText Trades, LocalText WhenRuledOut) : Rule(Head);
