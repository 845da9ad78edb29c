namespace GuideBuilder.Model;

/// <summary>Whether an item is in the plan.</summary>
public enum ItemState
{
    /// <summary>Its condition fails.</summary>
    RuledOut,

    /// <summary>Its condition waits for an answer: it may apply.</summary>
    Open,

    /// <summary>Its condition holds.</summary>
    Settled,
}

/// <summary>An entry of the guidance as this plan sees it: its state and why.</summary>
public sealed record Planned<T>(T Item, ItemState State, Because Because)
    where T : class
{
    /// <summary>Settled and open items both count as present.</summary>
    public bool IsPresent => State != ItemState.RuledOut;
}
