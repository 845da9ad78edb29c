namespace GuideBuilder.Model;

/// <summary>What the answers say: answers and derived facts under one lookup, unknown where they are unknown.</summary>
public sealed record Facts(AnswerSet Answers, FrozenDictionary<string, Given.Derived> Derived)
{
    /// <summary>The answer or fact of that name.</summary>
    public Given this[string name] => Derived.TryGetValue(name, out var fact) ? fact : Answers[name];
}
