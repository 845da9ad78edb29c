namespace GuideBuilder.Model;

/// <summary>What a name in a condition stands for when it is looked up: an answer or a fact.</summary>
public abstract record Given(string Name, Standing Standing, Value? Value)
{
    /// <summary>An answer: to which question, and where it was written (null when nothing was).</summary>
    public sealed record Answered(Question Question, Standing Standing, Value? Value, Place? Place) : Given(Question.Name, Standing, Value);

    /// <summary>A fact that follows from the answers, with the reason that gave it.</summary>
    public sealed record Derived(string Name, Standing Standing, Value? Value, Because Because) : Given(Name, Standing, Value);

    /// <summary>A fact that the planner sets for the case in hand, such as the way: known without more reason.</summary>
    public sealed record Set(string Name, Value Value) : Given(Name, Standing.Known, Value);
}

/// <summary>Finds what a name stands for. Every name in checked guidance is found; another is our own mistake and throws.</summary>
public delegate Given Lookup(string name);
