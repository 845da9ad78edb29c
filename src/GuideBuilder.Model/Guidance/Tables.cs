namespace GuideBuilder.Model;

/// <summary>A row of one of the free tables (electrical, soils, networks): named cells, each a quantity or words, with what it rests on.</summary>
public sealed record TableRow(string Table, string Id, FrozenDictionary<string, Cell> Cells, Basis Basis, Place Place)
{
    /// <summary>The quantity in that cell; a missing one is a hole in the guidance that the static check has ruled out, and throws.</summary>
    public Quantity Quantity(string cell) => Cells[cell].Quantity ?? throw new UnreachableException($"{Table}/{Id}/{cell} is not a quantity");

    /// <summary>The answers for which the row stands, where a table has a row for every case; null for a row that is found by its id.</summary>
    public Condition? When { get; init; }
}

/// <summary>One cell: a quantity, or words.</summary>
public sealed record Cell(Quantity? Quantity, string Words, Place Place);

/// <summary>Holidays of one nation: the dates closed, and the last day for which they are certain.</summary>
public sealed record HolidayList(string Id, ImmutableArray<Holiday> Days, LocalDate KnownUntil, Basis Basis, Place Place)
{
    /// <summary>The first day for which they are certain: the first of the year of the first of them; null for an empty list.</summary>
    public LocalDate? KnownFrom => Days.IsEmpty ? null : new(Days.Min(d => d.Date).Year, 1, 1);
}

/// <summary>One day on which offices are closed.</summary>
public sealed record Holiday(LocalDate Date, LocalText Name);

/// <summary>A nation the guidance speaks of: its holiday list and its currency.</summary>
public sealed record Nation(string Id, LocalText Title, string Holidays, Unit Currency, Place Place)
{
    /// <summary>The nation's own words for bodies, numbers and laws that pages name (network-emergency: 105).</summary>
    public FrozenDictionary<string, LocalText> Bodies { get; init; } = FrozenDictionary<string, LocalText>.Empty;

    /// <summary>The emergency numbers that may be printed, each with where it was read.</summary>
    public ImmutableArray<EmergencyNumber> Numbers { get; init; } = [];
}

/// <summary>A number to ring when it is urgent, and the source in which it was read.</summary>
public sealed record EmergencyNumber(string Number, string Source, Place Place);
