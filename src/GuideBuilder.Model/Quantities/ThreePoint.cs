namespace GuideBuilder.Model;

/// <summary>An uncertain amount: the least, the most likely and the most that we think possible, in a unit that its holder names. Low ≤ likely ≤ high.</summary>
public sealed record ThreePoint
{
    private ThreePoint(decimal low, decimal likely, decimal high) => (Low, Likely, High) = (low, likely, high);

    /// <summary>The least we think possible.</summary>
    public decimal Low { get; }

    /// <summary>The most likely single value.</summary>
    public decimal Likely { get; }

    /// <summary>The most we think possible.</summary>
    public decimal High { get; }

    /// <summary>Nothing, and certainly nothing.</summary>
    public static ThreePoint Zero { get; } = new(0, 0, 0);

    /// <summary>The three values, or null when they are not in order.</summary>
    public static ThreePoint? Of(decimal low, decimal likely, decimal high) => low <= likely && likely <= high ? new(low, likely, high) : null;

    /// <summary>A value that is certain: all three points the same.</summary>
    public static ThreePoint Certain(decimal value) => new(value, value, value);

    /// <summary>Each point put through a function that never reverses order; one that does is our own mistake.</summary>
    public ThreePoint Map(Func<decimal, decimal> increasing) =>
        Of(increasing(Low), increasing(Likely), increasing(High)) ?? throw new UnreachableException("the mapping reversed the order");

    /// <summary>Point by point.</summary>
    public static ThreePoint operator +(ThreePoint left, ThreePoint right) => new(left.Low + right.Low, left.Likely + right.Likely, left.High + right.High);

    /// <summary>Point by point.</summary>
    public static ThreePoint Add(ThreePoint left, ThreePoint right) => left + right;
}
