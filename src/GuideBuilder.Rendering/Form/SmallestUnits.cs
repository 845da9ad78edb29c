namespace GuideBuilder.Rendering.Form;

/// <summary>Quantities as the page carries them: whole numbers of the smallest unit of their dimension, so that a browser compares without rounding.</summary>
internal static class SmallestUnits
{
    // A penny or a cent; nothing that is written says so, for a sum is written in pounds and euros.
    private const decimal Penny = 0.01m;
    private const int Tried = 6;

    private static readonly FrozenDictionary<Dimension, decimal> Found = Unit.All.Select(u => u.Dimension).Distinct().ToFrozenDictionary(d => d, Find);

    /// <summary>How many of the smallest unit one of this unit is.</summary>
    internal static long Size(Unit unit) => Whole(unit.InBase / Found[unit.Dimension]) ?? throw new UnreachableException(unit.Symbol);

    /// <summary>A quantity in the smallest unit; null if that is no whole number.</summary>
    internal static long? Of(Quantity quantity) => Whole(quantity.Amount * Size(quantity.Unit));

    // The largest of which every unit of the dimension is a whole number; a tenth of the smallest unit, and so on, for inches.
    private static decimal Find(Dimension dimension)
    {
        var units = Unit.All.Where(u => u.Dimension == dimension).ToList();
        var size = dimension is Dimension.Pounds or Dimension.Euros ? Penny : units.Min(u => u.InBase);
        for (var again = 0; again < Tried && units.Exists(u => Whole(u.InBase / size) is null); again++)
        {
            size /= 10;
        }

        return size;
    }

    // A minute is a sixtieth of an hour, which no decimal is exactly.
    private static long? Whole(decimal number) => decimal.Round(number, 9) is var rounded && rounded == decimal.Truncate(rounded) ? (long)rounded : null;
}
