namespace GuideBuilder.Rendering.Wording;

/// <summary>Writes numbers and money, the same on every machine.</summary>
internal static class Figures
{
    /// <summary>A number with up to two places and thousands set apart by commas.</summary>
    internal static string Plain(decimal number) => Invariant($"{number:#,0.##}");

    /// <summary>Hours with quarters as a clock is read: 3¼; anything else as a plain number.</summary>
    internal static string Hours(decimal hours)
    {
        var whole = decimal.Truncate(hours);
        return (hours - whole) switch
        {
            0.25m => Quarter(whole, "¼"),
            0.5m => Quarter(whole, "½"),
            0.75m => Quarter(whole, "¾"),
            _ => Plain(hours),
        };
    }

    private static string Quarter(decimal whole, string part) => whole == 0 ? part : Plain(whole) + part;

    /// <summary>A sum to the penny, without pence when whole: £1,180 or £1,180.50.</summary>
    internal static string Exact(decimal sum, Unit currency) =>
        sum < 0 ? "−" + Exact(-sum, currency)
        : currency.Symbol + (sum == decimal.Truncate(sum) ? Invariant($"{sum:#,0}") : Invariant($"{sum:#,0.00}"));

    /// <summary>A sum to the nearest whole pound or euro, halves away from nothing: what a range is printed in.</summary>
    internal static string Rough(decimal sum, Unit currency) => Exact(decimal.Round(sum, 0, MidpointRounding.AwayFromZero), currency);

    /// <summary>A sum rounded down to two figures: what a range begins with.</summary>
    internal static decimal Down(decimal sum) => decimal.Floor(sum / Step(sum)) * Step(sum);

    /// <summary>A sum rounded up to two figures: what a range ends with.</summary>
    internal static decimal Up(decimal sum) => decimal.Ceiling(sum / Step(sum)) * Step(sum);

    /// <summary>A sum rounded to two figures.</summary>
    internal static decimal Near(decimal sum) => decimal.Round(sum / Step(sum), 0, MidpointRounding.AwayFromZero) * Step(sum);

    /// <summary>A range in whole numbers, its ends rounded outward.</summary>
    internal static ThreePoint Whole(ThreePoint amount)
    {
        var (low, high) = (decimal.Floor(amount.Low), decimal.Ceiling(amount.High));
        return ThreePoint.Of(low, Math.Clamp(decimal.Round(amount.Likely, 0, MidpointRounding.AwayFromZero), low, high), high)!;
    }

    /// <summary>Hours of work as somebody would say them: what arithmetic gave in whole hours, what was written in quarters as it was written, and less than an hour as it is.</summary>
    internal static ThreePoint Work(ThreePoint hours) => hours.Low < 1 || new[] { hours.Low, hours.Likely, hours.High }.All(h => h * 4 == decimal.Truncate(h * 4)) ? hours : Whole(hours);

    // The place of the second figure: 100 for 3,565.
    private static decimal Step(decimal sum)
    {
        var step = 1m;
        while (sum >= step * 100)
        {
            step *= 10;
        }

        return step;
    }

    /// <summary>A share as a whole percentage: 0.2 is 20 %.</summary>
    internal static string Percent(decimal share) => Invariant($"{share * 100:0.##} %");

    /// <summary>A quantity in as many places as it is worth: about three figures, hours to the next half.</summary>
    internal static Quantity Rounded(Quantity quantity) => quantity with
    {
        Amount = quantity.Unit.Dimension == Dimension.ClockTime ? decimal.Ceiling(quantity.Amount * 2) / 2 : decimal.Round(quantity.Amount, Places(Math.Abs(quantity.Amount)), MidpointRounding.AwayFromZero),
    };

    /// <summary>A rough quantity as a person with a barrow needs it: whole hours, tenths of a tonne, metres to the next twentieth, and under a metre millimetres, in tens where they are not whole.</summary>
    internal static Quantity Handy(Quantity quantity) => quantity.Unit.Dimension switch
    {
        Dimension.ClockTime => quantity with { Amount = Steps(quantity.Amount, 1) },
        Dimension.Length when quantity.Base < 1 => Quantity.Of(Steps(quantity.Base * 1000, quantity.Base * 1000 == decimal.Truncate(quantity.Base * 1000) ? 1 : 10), "mm"),
        Dimension.Length => Quantity.Of(Steps(quantity.Base, 0.05m), "m"),
        Dimension.Mass when quantity.Base >= 1000 => Quantity.Of(Steps(quantity.Base / 1000, 0.1m), "t"),
        Dimension.Mass => Quantity.Of(Steps(quantity.Base, 1), "kg"),
        Dimension.Volume => quantity with { Amount = Steps(quantity.Amount, quantity.Amount >= 1 ? 0.1m : 0.01m) },
        _ => Rounded(quantity),
    };

    private static decimal Steps(decimal amount, decimal step) => decimal.Round(amount / step, 0, MidpointRounding.AwayFromZero) * step;

    // A figure of the hundreds that is whole in tenths, such as a limit in law, keeps its tenth.
    private static int Places(decimal amount) => amount >= 100 ? amount * 10 == decimal.Truncate(amount * 10) ? 1 : 0 : amount >= 10 ? 1 : amount >= 1 ? 2 : 3;
}
