namespace GuideBuilder.Model;

/// <summary>The truth of a condition, and the leaves that decided it, in written order.</summary>
public sealed record Judgement(Truth Truth, ImmutableArray<Leaf> Deciding);

/// <summary>One comparison that was made: what it asked, of what, and how it came out.</summary>
public sealed record Leaf(Condition.Asks Asked, Given Given, Truth Truth);
