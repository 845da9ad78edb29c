namespace GuideBuilder.Model;

/// <summary>
/// An unknown answer that changes something: what the plan takes meanwhile (null where the assumed world does not ask it), a row for each answer it may turn out to have, and one for not being asked where that can be.
/// The rest says what puts it before others: how bad the worst danger is in which the answers differ (its score before controls, 0 for none), whether they decide if the needed-by date is met, and how far apart they set the middle of the finish (days) and of the cost (the nation's money);
/// and whether some answer would widen a range, as bad news may.
/// </summary>
public sealed record FindOut(
    OpenQuestion Open,
    Value? Assumed,
    ImmutableArray<FindOutRow> Rows,
    int Danger,
    bool DecidesDate,
    int FinishSpread,
    decimal CostSpread,
    bool MayWiden)
{
    /// <summary>The question.</summary>
    public Question Question => Open.Question;
}

/// <summary>
/// One answer (null for not asked), the share of worlds that have it, what the trials with it come to (null where it cannot change the cost, or the finish), the share of them that meet the needed-by date,
/// and the items that it would settle or rule out.
/// </summary>
public sealed record FindOutRow(Value? Answer, double Share, QuantileRange<decimal>? Cost, QuantileRange<LocalDate>? Finish, double? MeetsDate, ImmutableArray<ItemChange> Changes);

/// <summary>An open item, and what becomes of it.</summary>
public sealed record ItemChange(ItemName Item, ItemState State);
