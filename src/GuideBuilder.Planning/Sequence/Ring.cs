namespace GuideBuilder.Planning.Sequence;

/// <summary>Links that no dates can meet together, in order; the last leads back to where the first begins, or to a member of its group.</summary>
public sealed record Ring(ImmutableArray<RingLink> Links);

/// <summary>One link of a ring: the later activity waits for the earlier, or, where it says within, the earlier may not finish long before the later starts.</summary>
public sealed record RingLink(string From, string To, bool IsWithin);
