namespace GuideBuilder.Planning.Trials;

/// <summary>Worlds that give the same steps and the same lines of money: which trials run in them, the weight of each of these trials among all, and whether every world was looked at.</summary>
internal sealed record WorldClass(ImmutableArray<Step> Steps, ImmutableArray<(Cost Cost, decimal Quantity)> Lines, ImmutableArray<int> Trials, double WeightEach, bool EveryWorld)
{
    /// <summary>The share of these worlds among all.</summary>
    public double Share => Trials.Length * WeightEach;
}
