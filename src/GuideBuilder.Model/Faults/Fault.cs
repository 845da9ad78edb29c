namespace GuideBuilder.Model;

/// <summary>One mistake: a code that never changes, where it stands, what is wrong and what would be right.</summary>
public sealed record Fault(string Code, Severity Severity, Place Place, string Wrong, string Right)
{
    /// <summary>The line a person reads: <c>file:line:column: what is wrong. What would be right. [code]</c>; a warning says so.</summary>
    public override string ToString()
    {
        var kind = Severity == Severity.Warning ? "warning: " : "";
        var right = Right.Length == 0 ? "" : " " + Right;
        return $"{Place}: {kind}{Wrong}{right} [{Code}]";
    }
}
