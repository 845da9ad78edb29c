using GuideBuilder.Planning.Chance;
using GuideBuilder.Planning.Costs;
using GuideBuilder.Planning.Steps;

namespace GuideBuilder.Planning.Trials;

/// <summary>A step's duration in each trial, by common random numbers: the same step draws the same in every way and world.</summary>
internal sealed class DrawnDuration
{
    private readonly int _low;
    private readonly SamplingTable _table;
    private readonly uint[] _draws;

    /// <summary>The draws of a step for so many trials.</summary>
    public DrawnDuration(Step step, ulong seed, int trials)
    {
        int Days(Func<ThreePoint, decimal> point) => StepNetwork.Days(step.Takes, point);
        _low = Days(t => t.Low);
        _table = SamplingTable.Days(_low, Days(t => t.Likely), Days(t => t.High));
        _draws = _table.Steps == 0 ? [] : Draws.Of(seed, step.Id, "duration", trials);
    }

    /// <summary>Whole days in that trial.</summary>
    public int Days(int trial) => _draws.Length == 0 ? _low : _low + _table.Step(_draws[trial]);
}

/// <summary>A line's sum in each trial.</summary>
internal sealed class DrawnLine(Sum sum, uint[] draws)
{
    private readonly SamplingTable _table = SamplingTable.Amount(sum.Gross);

    /// <summary>The sum, gross, to the penny, in that trial.</summary>
    public decimal Gross(int trial) =>
        _table.Steps == 0 ? sum.Gross.Low : Math.Round(SamplingTable.ValueAt(sum.Gross, _table.Step(draws[trial])), 2, MidpointRounding.AwayFromZero);

    /// <summary>The VAT in a sum of this line, to the penny.</summary>
    public decimal VatIn(decimal gross) => sum.VatShare == 0 ? 0 : gross - Math.Round(gross / (1 + sum.VatShare), 2, MidpointRounding.AwayFromZero);
}
