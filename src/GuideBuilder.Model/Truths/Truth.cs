namespace GuideBuilder.Model;

/// <summary>Strong Kleene truth, ordered Fails &lt; Open &lt; Holds. Source: Kleene, Introduction to Metamathematics, section 64 (from memory).</summary>
public enum Truth
{
    /// <summary>Known not to be so.</summary>
    Fails,

    /// <summary>Neither known to be so nor known not to be: an answer is missing.</summary>
    Open,

    /// <summary>Known to be so.</summary>
    Holds,
}
