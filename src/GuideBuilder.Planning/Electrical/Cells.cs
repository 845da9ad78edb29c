namespace GuideBuilder.Planning.Electrical;

/// <summary>Amounts out of cells and into quantities; null stands for not known and goes through every sum.</summary>
internal static class Cells
{
    /// <summary>The quantity in that cell, or null.</summary>
    internal static Quantity? Find(this TableRow row, string cell) => row.Cells.GetValueOrDefault(cell)?.Quantity;

    /// <summary>The amount of that cell in a unit; null when there is no such cell or it measures something else.</summary>
    internal static decimal? In(this TableRow? row, string cell, string unit) => row?.Find(cell)?.AmountIn(unit);

    /// <summary>The share in that cell as a part of one.</summary>
    internal static decimal? Share(this TableRow? row, string cell) => row?.Find(cell) is { Unit.Dimension: Dimension.Share } share ? share.Base : null;

    /// <summary>The words in that cell, or none.</summary>
    internal static string Words(this TableRow? row, string cell) => row?.Cells.GetValueOrDefault(cell)?.Words ?? "";

    /// <summary>The amount in a unit; null when the quantity measures something else.</summary>
    internal static decimal? AmountIn(this Quantity quantity, string unit) =>
        Unit.Of(unit) is var wanted && wanted.Dimension == quantity.Unit.Dimension ? quantity.In(wanted).Amount : null;

    /// <summary>The amount in a unit as a quantity, at nine places; null stays null.</summary>
    internal static Quantity? Of(this decimal? amount, string unit) => amount is { } known ? Model.Quantity.Of(decimal.Round(known, 9), unit) : null;

    /// <summary>The quotient; null also where the divisor is nothing.</summary>
    internal static decimal? Over(this decimal? dividend, decimal? divisor) => divisor is null or 0 ? null : dividend / divisor;

    /// <summary>The square root of an amount that is not negative.</summary>
    internal static decimal? Root(this decimal? amount) => amount is >= 0 ? decimal.Round((decimal)Math.Sqrt((double)amount.Value), 12) : null;

    /// <summary>The natural logarithm of an amount above nothing, at nine places.</summary>
    internal static decimal? Log(this decimal? amount) => amount is > 0 ? decimal.Round((decimal)Math.Log((double)amount.Value), 9) : null;

    /// <summary>The sum, or null when one part is.</summary>
    internal static decimal? Total(this IEnumerable<decimal?> parts) => parts.Aggregate((decimal?)0m, (sum, part) => sum + part);
}
