namespace GuideBuilder.Model;

/// <summary>An amount in a unit, as it was written; compared and computed in the base unit of its dimension.</summary>
public sealed record Quantity(decimal Amount, Unit Unit)
{
    // Every amount that can be written is exact in so many places of its base unit, but for a minute, a sixtieth of an hour.
    private const int Exact = 15;

    /// <summary>The amount in the base unit of its dimension (metres, kilograms, hours …).</summary>
    public decimal Base => Amount * Unit.InBase;

    /// <summary>A plain number.</summary>
    public static Quantity Number(decimal amount) => new(amount, Unit.One);

    /// <summary>An amount in the unit of that symbol.</summary>
    public static Quantity Of(decimal amount, string symbol) => new(amount, Unit.Of(symbol));

    /// <summary>The same quantity in another unit of the same dimension; another dimension is our own mistake and throws.</summary>
    public Quantity In(Unit unit) =>
        unit.Dimension == Unit.Dimension
            ? new(Base / unit.InBase, unit)
            : throw new UnreachableException($"{Unit.Symbol} cannot become {unit.Symbol}");

    /// <summary>Negative, zero or positive as this is less than, equal to or more than the other of the same dimension.</summary>
    public int Against(Quantity other) =>
        other.Unit.Dimension == Unit.Dimension
            ? ReferenceEquals(Unit, other.Unit) ? Amount.CompareTo(other.Amount) : decimal.Round(Base, Exact).CompareTo(decimal.Round(other.Base, Exact))
            : throw new UnreachableException($"{Unit.Symbol} cannot be compared with {other.Unit.Symbol}");

    /// <summary>Number, space and symbol, money with the sign before and two places unless whole; no rounding.</summary>
    public override string ToString() => Unit.Dimension switch
    {
        Dimension.Pounds or Dimension.Euros => Unit.Symbol + (Amount == decimal.Truncate(Amount) ? Invariant($"{Amount:#,0}") : Invariant($"{Amount:#,0.00}")),
        Dimension.Number => Invariant($"{Amount:0.#########}"),
        _ => Invariant($"{Amount:0.#########} {Unit.Symbol}"),
    };
}
