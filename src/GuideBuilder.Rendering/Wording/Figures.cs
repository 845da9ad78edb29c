namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes numbers and money, the same on every machine.</summary>
internal static class Figures
{
    /// <summary>A number with up to two places and thousands set apart by commas.</summary>
    internal static string Plain(decimal number) => Invariant($"{number:#,0.##}");

    /// <summary>A sum to the penny, without pence when whole: £1,180 or £1,180.50.</summary>
    internal static string Exact(decimal sum, Unit currency) =>
        sum < 0 ? "−" + Exact(-sum, currency)
        : currency.Symbol + (sum == decimal.Truncate(sum) ? Invariant($"{sum:#,0}") : Invariant($"{sum:#,0.00}"));

    /// <summary>A sum to the nearest whole pound or euro, halves away from nothing: what a range is printed in.</summary>
    internal static string Rough(decimal sum, Unit currency) => Exact(decimal.Round(sum, 0, MidpointRounding.AwayFromZero), currency);

    /// <summary>A sum rounded down to about two figures: the lower end of a range that is no more exact than that.</summary>
    internal static string Down(decimal sum, Unit currency) => Exact(decimal.Floor(sum / Grain(sum)) * Grain(sum), currency);

    /// <summary>The same rounded up: the upper end.</summary>
    internal static string Up(decimal sum, Unit currency) => Exact(decimal.Ceiling(sum / Grain(sum)) * Grain(sum), currency);

    /// <summary>The same rounded to the nearest: what lies between.</summary>
    internal static string About(decimal sum, Unit currency) => Exact(decimal.Round(sum / Grain(sum), 0, MidpointRounding.AwayFromZero) * Grain(sum), currency);

    // Two figures, in steps of five of the second where there are more than three.
    private static decimal Grain(decimal sum) => Math.Abs(sum) switch
    {
        < 100 => 5,
        < 1_000 => 10,
        < 10_000 => 50,
        _ => 500,
    };

    /// <summary>A share as a whole percentage: 0.2 is 20 %.</summary>
    internal static string Percent(decimal share) => Invariant($"{share * 100:0.##} %");

    /// <summary>A quantity in as many places as it is worth: about three figures, hours to the next half.</summary>
    internal static Quantity Rounded(Quantity quantity) => quantity with
    {
        Amount = quantity.Unit.Dimension == Dimension.ClockTime ? decimal.Ceiling(quantity.Amount * 2) / 2 : decimal.Round(quantity.Amount, Places(Math.Abs(quantity.Amount)), MidpointRounding.AwayFromZero),
    };

    private static int Places(decimal amount) => amount >= 100 ? 0 : amount >= 10 ? 1 : amount >= 1 ? 2 : 3;
}
