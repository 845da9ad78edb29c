namespace GuideBuilder.Planning;

/// <summary>Amounts out of cells and into quantities; null stands for not known and goes through every sum.</summary>
internal static class Amounts
{
    /// <summary>The quantity in that cell, or null.</summary>
    internal static Quantity? Find(this TableRow row, string cell) => row.Cells.GetValueOrDefault(cell)?.Quantity;

    /// <summary>The amount of that cell in a unit; null when there is no such cell or it measures something else.</summary>
    internal static decimal? In(this TableRow? row, string cell, string unit) => row?.Find(cell)?.AmountIn(unit);

    /// <summary>The share in that cell as a part of one.</summary>
    internal static decimal? Share(this TableRow? row, string cell) => row?.Find(cell) is { Unit.Dimension: Dimension.Share } share ? share.Base : null;

    /// <summary>The words in that cell, or none.</summary>
    internal static string Words(this TableRow? row, string cell) => row?.Cells.GetValueOrDefault(cell)?.Words ?? "";

    /// <summary>The words in that cell, one by one.</summary>
    internal static string[] List(this TableRow? row, string cell) => row.Words(cell).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The amount in a unit; null when the quantity measures something else.</summary>
    internal static decimal? AmountIn(this Quantity quantity, string unit) =>
        Unit.Of(unit) is var wanted && wanted.Dimension == quantity.Unit.Dimension ? quantity.In(wanted).Amount : null;

    /// <summary>The amount in a unit as a quantity, at nine places; null stays null.</summary>
    internal static Quantity? Of(this decimal? amount, string unit) => amount is { } known ? Quantity.Of(decimal.Round(known, 9), unit) : null;

    /// <summary>The quotient; null also where the divisor is nothing.</summary>
    internal static decimal? Over(this decimal? dividend, decimal? divisor) => divisor is null or 0 ? null : dividend / divisor;

    /// <summary>The next whole number up; a billionth over a whole number is the whole number.</summary>
    internal static decimal? Up(this decimal? amount) => amount is { } known ? Math.Ceiling(decimal.Round(known, 9)) : null;

    /// <summary>The greater of two; null if either is.</summary>
    internal static decimal? Most(this decimal? left, decimal? right) => left is { } l && right is { } r ? Math.Max(l, r) : null;

    /// <summary>The amount, or nothing where it is less than nothing.</summary>
    internal static decimal? NotUnderZero(this decimal? amount) => amount.Most(0);

    /// <summary>The square root of an amount that is not negative.</summary>
    internal static decimal? Root(this decimal? amount) => amount is >= 0 ? decimal.Round((decimal)Math.Sqrt((double)amount.Value), 12) : null;

    /// <summary>The cube root of an amount that is not negative.</summary>
    internal static decimal? CubeRoot(this decimal? amount) => amount is >= 0 ? decimal.Round((decimal)Math.Cbrt((double)amount.Value), 12) : null;

    /// <summary>The natural logarithm of an amount above nothing, at nine places.</summary>
    internal static decimal? Log(this decimal? amount) => amount is > 0 ? decimal.Round((decimal)Math.Log((double)amount.Value), 9) : null;

    /// <summary>The sum, or null when one part is.</summary>
    internal static decimal? Total(this IEnumerable<decimal?> parts) => parts.Aggregate((decimal?)0m, (sum, part) => sum + part);

    /// <summary>The tangent of an angle in degrees under 90.</summary>
    internal static decimal? Tangent(this decimal? degrees) => degrees is >= 0 and < 90 ? decimal.Round((decimal)Math.Tan((double)degrees.Value * Math.PI / 180), 12) : null;

    /// <summary>The area of a circle of that diameter.</summary>
    internal static decimal? Circle(this decimal? diameter) => diameter * diameter * decimal.Round((decimal)Math.PI, 12) / 4;
}
