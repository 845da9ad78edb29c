using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>Days laid across a drawing, with months named and the days that do not count shaded.</summary>
internal sealed class TimeAxis
{
    private const int MostShadedDays = 300;

    private readonly LocalDate _first;
    private readonly decimal _unit;
    private readonly int _days;

    internal TimeAxis(LocalDate first, LocalDate last)
    {
        _first = first;
        _days = Math.Max(1, Period.DaysBetween(first, last) + 1);
        _unit = Sketch.Width / _days;
    }

    /// <summary>Where a day begins.</summary>
    internal decimal At(LocalDate day) => Math.Clamp(Period.DaysBetween(_first, day), 0, _days) * _unit;

    /// <summary>Where a day ends.</summary>
    internal decimal AfterDay(LocalDate day) => At(day.PlusDays(1));

    /// <summary>Shades weekends and holidays, and rules off the months, from a top to a bottom.</summary>
    internal void Draw(Bindery bindery, Sketch sketch, decimal top, decimal bottom)
    {
        if (_days <= MostShadedDays)
        {
            Shade(bindery, sketch, top, bottom);
        }

        var free = 0m;
        for (var month = new LocalDate(_first.Year, _first.Month, 1).PlusMonths(1); month < _first.PlusDays(_days); month = month.PlusMonths(1))
        {
            sketch.Line(At(month), top - 12, At(month), bottom, "fine");
            if (At(month) >= free && At(month) < Sketch.Width - 30)
            {
                sketch.Say(At(month) + 3, top - 3, bindery.Dates.MonthShort(month), "small");
                free = At(month) + 40;
            }
        }
    }

    private void Shade(Bindery bindery, Sketch sketch, decimal top, decimal bottom)
    {
        var closed = bindery.Guidance.Tables.Holidays.Where(h => h.Id == bindery.Plan.Nation.Holidays).SelectMany(h => h.Days).Select(d => d.Date).ToHashSet();
        LocalDate? since = null;
        for (var i = 0; i <= _days; i++)
        {
            var day = _first.PlusDays(i);
            var off = i < _days && (day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday || closed.Contains(day));
            if (!off && since is { } from)
            {
                sketch.Box(At(from), top, At(day) - At(from), bottom - top, "pale");
            }

            since = off ? since ?? day : null;
        }
    }
}
