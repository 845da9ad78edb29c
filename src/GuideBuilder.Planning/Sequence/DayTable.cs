namespace GuideBuilder.Planning.Sequence;

/// <summary>One calendar over a run of day numbers, so that the n-th open day from any day is two look-ups. A boundary b lies between day b-1 and day b.</summary>
internal sealed class DayTable
{
    /// <summary>Later than every day of the table.</summary>
    public const int Never = int.MaxValue / 2;

    private readonly int[] _open;
    private readonly int[] _rank;

    /// <summary>The table of the days for which the array says open, with a number that tells it from other tables of its horizon.</summary>
    public DayTable(ReadOnlySpan<bool> isOpen, int number)
    {
        Number = number;
        _rank = new int[isOpen.Length + 1];
        for (var day = 0; day < isOpen.Length; day++)
        {
            _rank[day + 1] = _rank[day] + (isOpen[day] ? 1 : 0);
        }

        _open = new int[_rank[^1]];
        for (var day = 0; day < isOpen.Length; day++)
        {
            if (isOpen[day])
            {
                _open[_rank[day]] = day;
            }
        }
    }

    /// <summary>Which table of its horizon this is.</summary>
    public int Number { get; }

    /// <summary>How many days the table covers.</summary>
    public int Length => _rank.Length - 1;

    /// <summary>How many open days lie before the boundary; a boundary outside the table counts as its nearest end.</summary>
    public int Rank(int boundary) => _rank[Math.Clamp(boundary, 0, Length)];

    /// <summary>Whether work is done that day; no day outside the table is open.</summary>
    public bool IsOpen(int day) => day >= 0 && day < Length && _rank[day + 1] > _rank[day];

    /// <summary>The first open day on or after a day, or Never.</summary>
    public int OnOrAfter(int day) => At(Rank(day));

    /// <summary>The last open day on or before a day, or -1.</summary>
    public int OnOrBefore(int day) => At(Rank(day + 1) - 1);

    /// <summary>The boundary after so many open days have passed from a boundary on; the boundary itself for none.</summary>
    public int After(int boundary, int openDays)
    {
        var last = openDays == 0 ? boundary - 1 : At(Rank(boundary) + openDays - 1);
        return last >= Never ? Never : last + 1;
    }

    /// <summary>The latest boundary from which so many open days have passed by another one, or -1. The mirror of After.</summary>
    public int Before(int boundary, int openDays) => openDays == 0 ? boundary : At(Rank(boundary) - openDays);

    /// <summary>The earliest start from which so many open days end no sooner than a boundary; 0 when that lies before the table.</summary>
    public int EarliestEndingAt(int boundary, int openDays) => openDays == 0 ? boundary : Math.Max(0, At(Rank(boundary - 1) - openDays + 1));

    /// <summary>The earliest boundary between which and a later one pass at most so many open days.</summary>
    public int EarliestWithin(int boundary, int openDays) => At(Rank(boundary) - openDays - 1) + 1;

    /// <summary>The latest boundary between an earlier one and which pass at most so many open days, or Never.</summary>
    public int LatestWithin(int boundary, int openDays) => At(Rank(boundary) + openDays);

    private int At(int index) => index < 0 ? -1 : index < _open.Length ? _open[index] : Never;
}
