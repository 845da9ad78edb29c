using GuideBuilder.Planning.Chance;

namespace GuideBuilder.Planning.Trials;

/// <summary>What each trial pays, and when: a line on the last day of the step at which it falls due, or with the finish where the trial has no such step; what a mishap costs, with its step.</summary>
internal sealed class TrialPayments
{
    private const decimal Hundred = 100;
    private readonly TrialRun _run;
    private readonly List<(int Day, long Gross)>[] _paid;

    private TrialPayments(TrialRun run, List<(int Day, long Gross)>[] paid) => (_run, _paid) = (run, paid);

    /// <summary>The payments of all trials.</summary>
    public static TrialPayments Of(TrialRun run) => new(run, [.. run.Worlds.Contents.Select((content, p) => run.Setting.Outlook.Paid(content, run.Worlds.Draws[p])
        .Select(line => (line.Due >= 0 && run.Dates.Ends[line.Due][p] is var end and not StepRun.Absent ? end : run.Dates.Finish[p], line.Gross)).ToList())]);

    /// <summary>The day by which nine in ten trials have paid everything.</summary>
    public LocalDate NearlyAll => _run.Horizon.Date(Quantiles.OfDays([.. _paid.Select(p => p.Select(x => x.Day).DefaultIfEmpty(_run.Horizon.StartDay).Max())], _run.Worlds.Weights)!.P90);

    /// <summary>The sums that five and nine in ten trials have not passed by the end of each of those days.</summary>
    public ImmutableArray<PaidBy> By(IEnumerable<LocalDate> days) => [.. days.Select(day =>
    {
        var last = _run.Horizon.Day(day);
        var sums = Quantiles.Of(_paid.Select(p => p.Where(x => x.Day <= last).Sum(x => x.Gross)).Zip(_run.Worlds.Weights));
        return new PaidBy(day, sums.P50 / Hundred, sums.P90 / Hundred);
    })];
}
