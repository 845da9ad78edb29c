namespace GuideBuilder.Planning.Chance;

/// <summary>A range in figures: in one, five, eight and nine of ten trials the value is no more than this; and the lowest and highest of all.</summary>
public sealed record Quantiles<T>(T Lowest, T P10, T P50, T P80, T P90, T Highest)
    where T : IComparable<T>;

/// <summary>Reads quantiles off values. A quantile is the smallest value that at least that share does not exceed, so it is always a value that occurred.</summary>
public static class Quantiles
{
    /// <summary>The quantiles of values that count alike; at least one.</summary>
    public static Quantiles<T> OfEqual<T>(IReadOnlyCollection<T> values)
        where T : IComparable<T>
    {
        var sorted = values.Order().ToArray();
        T At(long percent) => sorted[(int)(((percent * sorted.Length) + 99) / 100) - 1];
        return new(sorted[0], At(10), At(50), At(80), At(90), sorted[^1]);
    }

    /// <summary>The quantiles of values that count by weight (0 or more, at least one above).</summary>
    public static Quantiles<T> Of<T>(IEnumerable<(T Value, double Weight)> values)
        where T : IComparable<T>
    {
        var sorted = values.Where(v => v.Weight > 0).OrderBy(v => v.Value).ToArray();
        var total = sorted.Sum(v => v.Weight);
        T At(double percent)
        {
            var (sum, i) = (0.0, 0);
            while (i < sorted.Length - 1 && (sum += sorted[i].Weight) * 100 < percent * total)
            {
                i++;
            }

            return sorted[i].Value;
        }

        return new(sorted[0].Value, At(10), At(50), At(80), At(90), sorted[^1].Value);
    }

    /// <summary>The share of values that are no more than a limit, from 0 to 1.</summary>
    public static double ShareUpTo<T>(IReadOnlyCollection<T> values, T limit)
        where T : IComparable<T> => (double)values.Count(v => v.CompareTo(limit) <= 0) / values.Count;
}
