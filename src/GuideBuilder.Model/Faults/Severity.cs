namespace GuideBuilder.Model;

/// <summary>How much a fault matters.</summary>
public enum Severity
{
    /// <summary>Worth a look; the stage still gives its value.</summary>
    Warning,

    /// <summary>The stage gives no value.</summary>
    Error,
}
