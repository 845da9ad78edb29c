namespace GuideBuilder.Model;

/// <summary>What a rule or a figure rests on: the ids of its sources, how the figure came to us, and the day it was true (null when not a dated figure).</summary>
public sealed record Basis(ImmutableArray<string> Sources, Mark Mark, LocalDate? AsAt, LocalDate? ReviewBy)
{
    /// <summary>Rests on nothing and claims nothing.</summary>
    public static Basis Nothing { get; } = new([], Mark.Judged, null, null);
}

/// <summary>How a figure came to us.</summary>
public enum Mark
{
    /// <summary>Read in the source named.</summary>
    Read,

    /// <summary>From memory; not looked up.</summary>
    Memory,

    /// <summary>Our judgement; no published count.</summary>
    Judged,
}
