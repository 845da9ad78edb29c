namespace GuideBuilder.Model;

/// <summary>Whether there is an answer.</summary>
public enum Standing
{
    /// <summary>Nobody was asked, because the answers before rule the question out.</summary>
    NotAsked,

    /// <summary>Asked, and not answered or answered <c>unknown</c>.</summary>
    Unknown,

    /// <summary>Answered.</summary>
    Known,
}
