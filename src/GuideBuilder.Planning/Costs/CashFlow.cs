using GuideBuilder.Planning.Trials;

namespace GuideBuilder.Planning.Costs;

/// <summary>What leaves the account when, and what of it may come back.</summary>
internal static class CashFlow
{
    /// <summary>A payment for each added line that has a day and a sum, by day, then in guidance order. What is paid ahead of a meeting may come back until its day.</summary>
    public static ImmutableArray<Payment> Of(IEnumerable<PlannedCost> costs, ImmutableArray<MeetingDay> meetings)
    {
        var due = costs.Where(c => c is { Cost.IsPresent: true, Added: true, Due: not null } && c.Gross.Likely > 0).OrderBy(c => c.Due).ToArray();
        var payments = ImmutableArray.CreateBuilder<Payment>(due.Length);
        var paid = 0m;
        foreach (var line in due)
        {
            var day = line.Due!.Value;
            paid += line.Gross.Likely;
            payments.Add(new(line, day, line.Gross.Likely, paid, due.Take(payments.Count + 1).Where(c => IsAhead(c.Cost.Item, day, meetings)).Sum(c => c.Gross.Likely)));
        }

        return payments.MoveToImmutable();
    }

    /// <summary>What the trials have paid by the end of each month, until nine in ten have paid all.</summary>
    public static ImmutableArray<PaidBy> ByMonth(TrialRun trials)
    {
        var paid = TrialPayments.Of(trials);
        var days = new List<LocalDate>();
        for (var day = trials.Horizon.Date(trials.Horizon.StartDay).With(DateAdjusters.EndOfMonth); day <= trials.Horizon.End; day = day.PlusMonths(1).With(DateAdjusters.EndOfMonth))
        {
            days.Add(day);
            if (day >= paid.NearlyAll)
            {
                break;
            }
        }

        return paid.By(days);
    }

    private static bool IsAhead(Cost cost, LocalDate day, ImmutableArray<MeetingDay> meetings) =>
        cost.PaidAheadOf is { } meeting && meetings.Any(m => m.Meeting == meeting && m.Day > day);
}
