namespace GuideBuilder.Model;

/// <summary>Whether values lie within limits.</summary>
internal static class Ranges
{
    internal static bool Holds(this Comparison.Within within, Quantity quantity) =>
        (within.From is not { } from || Above(quantity.Against(from.Quantity!), from.Included))
        && (within.To is not { } to || Above(-quantity.Against(to.Quantity!), to.Included));

    internal static bool Holds(this Comparison.Within within, LocalDate date) =>
        (within.From is not { } from || Above(date.CompareTo(from.Date!.Value), from.Included))
        && (within.To is not { } to || Above(-date.CompareTo(to.Date!.Value), to.Included));

    internal static Truth Holds(this Comparison.Within within, Value.Spread spread)
    {
        var low = within.Holds(spread.Lowest);
        var high = within.Holds(spread.Highest);
        var straddles = !low && !high && within is { From: { } from, To: { } to }
            && spread.Lowest.Against(to.Quantity!) < 0 && spread.Highest.Against(from.Quantity!) > 0;
        return low == high && !straddles ? Kleene.Of(low) : Truth.Open;
    }

    private static bool Above(int sign, bool included) => sign > 0 || (included && sign == 0);
}
