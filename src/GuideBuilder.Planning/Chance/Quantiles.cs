namespace GuideBuilder.Planning.Chance;

/// <summary>A range in figures: in one, five, eight and nine of ten trials the value is no more than this; and the lowest and highest of all.</summary>
public sealed record Quantiles<T>(T Lowest, T P10, T P50, T P80, T P90, T Highest)
    where T : IComparable<T>;

/// <summary>Reads quantiles off values. A quantile is the smallest value that at least that share does not exceed, so it is always a value that occurred.</summary>
public static class Quantiles
{
    // A sum of many small weights may miss a round share by its last digits.
    private const double Nearly = 1 - 1e-12;

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
        var counted = values.Where(v => v.Weight > 0).ToArray();
        var (sorted, weights) = (Array.ConvertAll(counted, v => v.Value), Array.ConvertAll(counted, v => v.Weight));
        Array.Sort(sorted, weights);
        var total = weights.Sum();
        T At(double percent) => sorted[Reaching(weights, percent * total)];
        return new(sorted[0], At(10), At(50), At(80), At(90), sorted[^1]);
    }

    /// <summary>The quantiles of day numbers that count by weight; days of no trial (the least whole number) are left out. Null when there is none.</summary>
    public static Quantiles<int>? OfDays(ReadOnlySpan<int> days, ReadOnlySpan<double> weights)
    {
        var (first, last) = (int.MaxValue, int.MinValue);
        for (var i = 0; i < days.Length; i++)
        {
            if (days[i] != int.MinValue && weights[i] > 0)
            {
                (first, last) = (Math.Min(first, days[i]), Math.Max(last, days[i]));
            }
        }

        if (first > last)
        {
            return null;
        }

        var byDay = new double[last - first + 1];
        var total = 0.0;
        for (var i = 0; i < days.Length; i++)
        {
            if (days[i] != int.MinValue && weights[i] > 0)
            {
                byDay[days[i] - first] += weights[i];
                total += weights[i];
            }
        }

        int At(double percent) => first + Reaching(byDay, percent * total);
        return new(first, At(10), At(50), At(80), At(90), last);
    }

    /// <summary>The days that one, two … nine tenths of the weight and all of it do not exceed; at least one day.</summary>
    public static ImmutableArray<int> Tenths(IEnumerable<int> days, IEnumerable<double> weights)
    {
        var sorted = days.Zip(weights).Where(d => d.Second > 0).OrderBy(d => d.First).ToArray();
        var (byDay, total) = (sorted.Select(d => d.Second).ToArray(), sorted.Sum(d => d.Second));
        return [.. Enumerable.Range(1, 10).Select(tenth => sorted[Reaching(byDay, tenth * 10 * total)].First)];
    }

    private static int Reaching(double[] weights, double hundredfold)
    {
        var (sum, i) = (weights[0], 0);
        while (i < weights.Length - 1 && sum * 100 < hundredfold * Nearly)
        {
            sum += weights[++i];
        }

        return i;
    }

    /// <summary>The share of values that are no more than a limit, from 0 to 1.</summary>
    public static double ShareUpTo<T>(IReadOnlyCollection<T> values, T limit)
        where T : IComparable<T> => (double)values.Count(v => v.CompareTo(limit) <= 0) / values.Count;
}
