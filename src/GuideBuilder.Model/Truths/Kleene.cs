namespace GuideBuilder.Model;

/// <summary>The connectives of strong Kleene logic.</summary>
public static class Kleene
{
    /// <summary>The smaller of the two.</summary>
    public static Truth And(this Truth left, Truth right) => left < right ? left : right;

    /// <summary>The larger of the two.</summary>
    public static Truth Or(this Truth left, Truth right) => left > right ? left : right;

    /// <summary>The mirror: Open stays Open.</summary>
    public static Truth Not(this Truth truth) => Truth.Holds - (int)truth;

    /// <summary>The smallest of all; Holds when there are none.</summary>
    public static Truth All(this IEnumerable<Truth> truths) => truths.Aggregate(Truth.Holds, And);

    /// <summary>The largest of all; Fails when there are none.</summary>
    public static Truth Any(this IEnumerable<Truth> truths) => truths.Aggregate(Truth.Fails, Or);

    /// <summary>Holds or Fails, for what is always known.</summary>
    public static Truth Of(bool holds) => holds ? Truth.Holds : Truth.Fails;
}
