using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Steps;

namespace GuideBuilder.Planning.Trials;

/// <summary>A duration in each trial, by common random numbers: the same item draws the same in every way and world.</summary>
internal sealed class DrawnDuration
{
    private readonly int _low;
    private readonly int[] _days;

    /// <summary>A duration by its draws.</summary>
    public DrawnDuration(Model.Duration takes, uint[] draws)
    {
        Trials = draws.Length;
        int Days(Func<ThreePoint, decimal> point) => StepNetwork.Days(takes, point);
        _low = Days(t => t.Low);
        var table = SamplingTable.Days(_low, Days(t => t.Likely), Days(t => t.High));
        _days = table.Steps == 0 ? [] : Array.ConvertAll(draws, d => _low + table.Step(d));
    }

    /// <summary>For how many trials it has been drawn.</summary>
    public int Trials { get; }

    /// <summary>Whole days in that trial.</summary>
    public int Days(int trial) => _days.Length == 0 ? _low : _days[trial];
}

/// <summary>A line's sum in each trial, in pennies, gross and the VAT in it.</summary>
internal sealed class DrawnLine
{
    private const long NotYet = long.MinValue;
    private readonly Sum _sum;
    private readonly uint[] _draws;
    private readonly SamplingTable _table;
    private readonly long[] _gross;
    private readonly long[] _vat;

    /// <summary>The sums of a line by its draws.</summary>
    public DrawnLine(Sum sum, uint[] draws)
    {
        (_sum, _draws, _table) = (sum, draws, SamplingTable.Amount(sum.Gross));
        (_gross, _vat) = (new long[_table.Steps + 1], new long[_table.Steps + 1]);
        Array.Fill(_gross, NotYet);
    }

    /// <summary>The sum in that trial.</summary>
    public (long Gross, long Vat) Of(int trial)
    {
        var step = _table.Steps == 0 ? 0 : _table.Step(_draws[trial]);
        var gross = Volatile.Read(ref _gross[step]);
        return gross != NotYet ? (gross, _vat[step]) : Work(step);
    }

    // Two threads may both work it out; they find the same.
    private (long Gross, long Vat) Work(int step)
    {
        var gross = _table.Steps == 0 ? _sum.Gross.Low : Math.Round(SamplingTable.ValueAt(_sum.Gross, step), 2, MidpointRounding.AwayFromZero);
        var vat = _sum.VatShare == 0 ? 0 : gross - Math.Round(gross / (1 + _sum.VatShare), 2, MidpointRounding.AwayFromZero);
        _vat[step] = (long)(vat * 100);
        Volatile.Write(ref _gross[step], (long)(gross * 100));
        return ((long)(gross * 100), _vat[step]);
    }
}

/// <summary>Hours of work in each trial, in hundredths of an hour.</summary>
internal sealed class DrawnHours(ThreePoint hours, uint[] draws)
{
    private readonly SamplingTable _table = SamplingTable.Amount(hours);
    private readonly int[] _byStep = [.. Enumerable.Range(0, SamplingTable.Amount(hours).Steps + 1).Select(s => (int)(SamplingTable.ValueAt(hours, s) * 100))];

    /// <summary>For how many trials they have been drawn.</summary>
    public int Trials => draws.Length;

    /// <summary>The hours in that trial.</summary>
    public int Of(int trial) => _table.Steps == 0 ? _byStep[0] : _byStep[_table.Step(draws[trial])];
}

/// <summary>A chance event in each trial: of which step, whether it happens there, how many days it takes more, and what it costs.</summary>
internal sealed record DrawnEvent(int Step, ChanceEvent Event, uint[] Draws, DrawnDuration? More, DrawnLine? Cost)
{
    /// <summary>Whether it happens in that trial of a world where it may.</summary>
    public bool Happens(int trial) => Chance.Draws.Happens(Draws[trial], (double)Event.Chance);
}
