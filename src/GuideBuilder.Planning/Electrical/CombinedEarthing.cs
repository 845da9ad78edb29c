namespace GuideBuilder.Planning.Electrical;

/// <summary>What combined earthing means for something that would be earthed to it.</summary>
public enum CombinedRule
{
    /// <summary>The law forbids it.</summary>
    Barred,

    /// <summary>Only under conditions that the electrician must show.</summary>
    Conditions,

    /// <summary>A question for the electrician.</summary>
    Ask,
}

/// <summary>Where combined earthing must not go, and where it raises a question. Source: ESQCR 2002 regulation 9(4); BS 7671 sections 702 and 722, in rows combined-….</summary>
public static class CombinedEarthing
{
    /// <summary>The things the table speaks of, by the end of their row's id, in written order.</summary>
    public static ImmutableArray<string> Things(ElectricalFigures figures) => [.. figures.Group(Beginning).Select(r => r.Id[Beginning.Length..])];

    /// <summary>The rule for a thing; null where the table says nothing of it, which is not leave.</summary>
    public static CombinedRule? For(ElectricalFigures figures, string thing) => figures.Row(Beginning + thing).Words("status") switch
    {
        "barred" => CombinedRule.Barred,
        "conditions" => CombinedRule.Conditions,
        "ask" => CombinedRule.Ask,
        _ => null,
    };

    private const string Beginning = "combined-";
}
