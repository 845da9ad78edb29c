using System.Collections.Concurrent;

namespace GuideBuilder.Planning.Sequence;

/// <summary>The days that a plan may use, as numbers: from three years before its start (for what should have begun already) to three years after. Keeps the tables of its calendars, so that many networks may share them; safe from several threads.</summary>
public sealed class Horizon
{
    private readonly ConcurrentDictionary<WorkingCalendar, DayTable> _tables = new();
    private readonly ConcurrentDictionary<string, DayTable> _shared = new(StringComparer.Ordinal);
    private readonly LocalDate _origin;
    private readonly int _length;
    private int _tablesMade;

    /// <summary>The horizon of a plan that starts on a day.</summary>
    public Horizon(LocalDate start)
    {
        _origin = PlanReach.Of(start).Start;
        _length = Period.DaysBetween(_origin, PlanReach.Of(start).End) + 1;
        Start = start;
        StartDay = Day(start);
    }

    /// <summary>The first day on which something not yet done may start.</summary>
    public LocalDate Start { get; }

    /// <summary>The last day on which anything may finish.</summary>
    public LocalDate End => Date(_length - 1);

    /// <summary>The number of a day; days outside the horizon have numbers too.</summary>
    public int Day(LocalDate date) => Period.DaysBetween(_origin, date);

    /// <summary>The day of a number; the last day for one that stands for never.</summary>
    public LocalDate Date(int day) => _origin.PlusDays(day < DayTable.Never / 2 ? day : _length - 1);

    internal int StartDay { get; }

    /// <summary>The number of the last day.</summary>
    internal int LastDay => _length - 1;

    internal DayTable Table(WorkingCalendar calendar) => _tables.GetOrAdd(calendar, Build);

    /// <summary>The days that all tables share.</summary>
    internal DayTable Shared(DayTable[] tables) => _shared.GetOrAdd(string.Join(' ', tables.Select(t => t.Number).Order()), _ => Meet(tables));

    private DayTable Meet(DayTable[] tables)
    {
        var open = new bool[_length];
        Array.Fill(open, true);
        foreach (var table in tables)
        {
            for (var day = 0; day < _length; day++)
            {
                open[day] &= table.IsOpen(day);
            }
        }

        return new(open, Interlocked.Increment(ref _tablesMade));
    }

    private DayTable Build(WorkingCalendar calendar)
    {
        var open = new bool[_length];
        var weekday = (int)_origin.DayOfWeek;
        for (var day = 0; day < _length; day++)
        {
            open[day] = calendar.Weekdays.Contains((IsoDayOfWeek)weekday);
            weekday = (weekday % 7) + 1;
        }

        foreach (var day in calendar.Closed.Select(Day).Where(d => d >= 0 && d < _length))
        {
            open[day] = false;
        }

        return new(open, Interlocked.Increment(ref _tablesMade));
    }
}
