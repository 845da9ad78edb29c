namespace GuideBuilder.Planning.Electrical;

/// <summary>How many phases a circuit has.</summary>
public enum Phases
{
    /// <summary>One live conductor and the neutral.</summary>
    One,

    /// <summary>Three live conductors.</summary>
    Three,
}

/// <summary>The words by which the table knows the phases.</summary>
internal static class PhaseWords
{
    internal static string Cell(this Phases phases) => phases switch
    {
        Phases.One => "single",
        Phases.Three => "three",
        _ => throw new UnreachableException(),
    };
}
