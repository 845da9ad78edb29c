namespace GuideBuilder.Cli.Asking;

/// <summary>What a person said in a line: a closed set.</summary>
internal abstract record Said
{
    private Said()
    {
    }

    /// <summary>An answer.</summary>
    internal sealed record Answer(Written Value) : Said;

    /// <summary>Nothing: go on.</summary>
    internal sealed record Nothing : Said;

    /// <summary>To the question before.</summary>
    internal sealed record Back : Said;

    /// <summary>To the next question, whether this one is answered or not.</summary>
    internal sealed record Next : Said;

    /// <summary>To the end of the section.</summary>
    internal sealed record Section : Said;

    /// <summary>Show the section with its answers.</summary>
    internal sealed record Sheet : Said;

    /// <summary>Show what waits for this answer.</summary>
    internal sealed record Why : Said;

    /// <summary>Show the words that may be said.</summary>
    internal sealed record Help : Said;

    /// <summary>Save and say where.</summary>
    internal sealed record Save : Said;

    /// <summary>Save and leave; so does the end of the input.</summary>
    internal sealed record Later : Said;

    /// <summary>To the question of that number in the section.</summary>
    internal sealed record To(int Number) : Said;

    /// <summary>A number that no option has.</summary>
    internal sealed record NotThere(int Number) : Said;

    /// <summary>A line that is too long to be an answer.</summary>
    internal sealed record TooMuch(int Most) : Said;
}
