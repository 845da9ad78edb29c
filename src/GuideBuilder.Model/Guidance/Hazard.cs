namespace GuideBuilder.Model;

/// <summary>Something that could hurt somebody. Severity and likelihood run from 1 to 5; scores order attention and prove nothing.</summary>
public sealed record Hazard(
    RuleHead Head,
    SignalWord Word,
    LocalText Cause,
    LocalText Harm,
    LocalText People,
    LocalText WhenItArises,
    ImmutableArray<HazardControl> Controls,
    LocalText StopWhen,
    RiskScore Before,
    RiskScore After,
    bool StopSign,
    Review? ReviewedBy) : Rule(Head)
{
    /// <summary>The step that ends a stop sign once the log says that it is done; null for a hazard that is none.</summary>
    public string? Until { get; init; }

    /// <summary>Whether it stands before all others where it is settled: what a person at home lives by.</summary>
    public bool ComesFirst { get; init; }
}

/// <summary>Severity and likelihood, 1 to 5 each, by judgement.</summary>
public sealed record RiskScore(int Severity, int Likelihood)
{
    /// <summary>Severity times likelihood, 1 to 25.</summary>
    public int Score => Severity * Likelihood;
}

/// <summary>One control: where it stands in the hierarchy, what is done, and who does it (a party id).</summary>
public sealed record HazardControl(ControlLevel Level, LocalText What, string By);

/// <summary>The hierarchy of control, strongest first.</summary>
public enum ControlLevel
{
    /// <summary>Remove the hazard.</summary>
    Eliminate,

    /// <summary>Use something less harmful.</summary>
    Substitute,

    /// <summary>Put a barrier between.</summary>
    Engineer,

    /// <summary>Rules, permits, training, signs.</summary>
    Administrative,

    /// <summary>Worn by the person.</summary>
    ProtectiveEquipment,
}

/// <summary>The signal words of ANSI Z535.6 (DANGER, WARNING, CAUTION, NOTICE), highest last so that they sort.</summary>
public enum SignalWord
{
    /// <summary>Not about injury.</summary>
    Notice,

    /// <summary>Could cause minor or moderate injury.</summary>
    Caution,

    /// <summary>Could cause death or serious injury.</summary>
    Warning,

    /// <summary>Will cause death or serious injury if not avoided.</summary>
    Danger,
}

/// <summary>Who has read a text of severity 5, in which role, and when; null on the hazard means not yet reviewed.</summary>
public sealed record Review(LocalText Role, LocalDate On)
{
    /// <summary>The mark of the text as it was when it was read, which <c>collate</c> prints; null where the review does not say. Another mark now means that the text has changed since.</summary>
    public string? Of { get; init; }
}
