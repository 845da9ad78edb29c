using System.Collections.Concurrent;

namespace GuideBuilder.Planning.Chance;

/// <summary>
/// A three-point value as whole steps from its low to its high, with thresholds that turn a draw into a step by look-up.
/// The thresholds are rounded to a thousand-millionth, so that a last bit that differs between machines changes no draw.
/// </summary>
public sealed class SamplingTable
{
    private const int MoneySteps = 200;
    private const int Shapes = 100;
    private const long Grain = 1_000_000_000;
    private static readonly ConcurrentDictionary<(int Mode, int Steps), double[]> Exact = new();
    private static readonly ConcurrentDictionary<int, double[]> Shaped = new();
    private readonly ulong[] _thresholds;

    private SamplingTable(double[] cumulative)
    {
        _thresholds = [.. cumulative.Select(p => (((ulong)Math.Round(p * Grain)) << 32) / Grain)];
        Mean = cumulative.Sum(p => 1 - p);
    }

    /// <summary>The highest step; the lowest is 0.</summary>
    public int Steps => _thresholds.Length;

    /// <summary>The mean step.</summary>
    public double Mean { get; }

    /// <summary>The table of a duration in whole days, a step a day: add the low value to what is drawn. Low ≤ likely ≤ high.</summary>
    public static SamplingTable Days(int low, int likely, int high) =>
        low == high ? new([]) : new(Exact.GetOrAdd((likely - low, high - low), k => new Pert((double)k.Mode / k.Steps).Cumulative(k.Steps)));

    /// <summary>
    /// The table of an amount by 200 equal steps of its range. Shapes are tabled for each hundredth of the place of the likely value;
    /// a place between two hundredths mixes both in proportion, which keeps the mean exact and lets no rise of a value lower it.
    /// </summary>
    public static SamplingTable Amount(ThreePoint amount)
    {
        if (amount.Low == amount.High)
        {
            return new([]);
        }

        var place = (double)((amount.Likely - amount.Low) / (amount.High - amount.Low)) * Shapes;
        var (under, over) = (ShapeOf((int)Math.Floor(place)), ShapeOf((int)Math.Ceiling(place)));
        var share = place - Math.Floor(place);
        return new([.. under.Zip(over, (u, o) => u + (share * (o - u)))]);
    }

    /// <summary>The amount at a step of its table.</summary>
    public static decimal ValueAt(ThreePoint amount, int step) => amount.Low + ((amount.High - amount.Low) * step / MoneySteps);

    /// <summary>The step that a draw stands for.</summary>
    public int Step(uint draw)
    {
        var (low, high) = (0, _thresholds.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = draw < _thresholds[middle] ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private static double[] ShapeOf(int hundredth) => Shaped.GetOrAdd(hundredth, h => new Pert((double)h / Shapes).Cumulative(MoneySteps));
}
