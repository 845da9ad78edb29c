namespace GuideBuilder.Model;

/// <summary>What every entry of the guidance that can be brought into a plan has in common: kind, id (unique in the whole guidance), title, condition, reason in words, what it rests on, and where it stands.</summary>
public abstract record Rule(RuleHead Head)
{
    /// <summary>The entry's id, kebab-case.</summary>
    public string Id => Head.Id;

    /// <summary>The entry's short name, as printed.</summary>
    public LocalText Title => Head.Title;
}

/// <summary>The keys that all such entries share.</summary>
public sealed record RuleHead(string Kind, string Id, LocalText Title, Condition AppliesIf, LocalText Because, Basis Basis, Place Place);
