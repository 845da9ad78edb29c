namespace GuideBuilder.Tests.Support;

/// <summary>Says of a test that it checks a calculator against the outside: the subject and number of the case, where the expected value stands, and how it came to us.</summary>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class PublishedCheckAttribute(string subject, int number, string source, CheckMark mark) : Attribute
{
    public string Subject => subject;

    public int Number => number;

    public string Source => source;

    public CheckMark Mark => mark;
}

/// <summary>How an expected value came to us.</summary>
internal enum CheckMark
{
    /// <summary>The answer, or the rule that gives it, was read in the source.</summary>
    Read,

    /// <summary>It rests on figures from memory.</summary>
    Memory,

    /// <summary>It was worked out by other means from figures of the source.</summary>
    Derived,
}
