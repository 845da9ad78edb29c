namespace GuideBuilder.Rendering.Collating;

/// <summary>Something that a publisher should look at: whether it must be put right before publishing, what kind of thing it is (an id that never changes), where, and what.</summary>
public sealed record Finding(Severity Severity, string Kind, string Where, string What);
