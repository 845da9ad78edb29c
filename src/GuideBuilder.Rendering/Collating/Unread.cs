namespace GuideBuilder.Rendering.Collating;

/// <summary>What nobody fit to judge it has read yet: cautions of the highest severity, sources cited from memory, and translations.</summary>
public static class Unread
{
    private static readonly FrozenSet<string> Cautions = new[] { "caution-not-reviewed", "caution-review-without-mark" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Others = new[] { "source-from-memory", "translation-not-reviewed" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a finding says that something is unread.</summary>
    public static bool Is(Finding finding) => Cautions.Contains(finding.Kind) || Others.Contains(finding.Kind);

    /// <summary>The findings for somebody who is about to publish: a caution of the highest severity that nobody has read is to be put right first.</summary>
    public static ImmutableArray<Finding> ToBePutRight(ImmutableArray<Finding> findings) =>
        [.. findings.Select(f => Cautions.Contains(f.Kind) ? f with { Severity = Severity.Error } : f)];
}
