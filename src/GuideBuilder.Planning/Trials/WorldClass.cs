namespace GuideBuilder.Planning.Trials;

/// <summary>Worlds that give the same steps and the same lines of money: which trials run in them, their share among all worlds, and whether every world was looked at.</summary>
internal sealed record WorldClass(ImmutableArray<Step> Steps, ImmutableArray<(Cost Cost, decimal Quantity)> Lines, ImmutableArray<int> Trials, double Share, bool EveryWorld)
{
    /// <summary>The weight of each of its trials among all trials of the way.</summary>
    public double WeightEach => Share / Trials.Length;
}
