using GuideBuilder.Model;
using static System.FormattableString;

namespace GuideBuilder.Tests.Hostile;

/// <summary>What must agree within any plan.</summary>
internal static class PlanSums
{
    /// <summary>What does not, a line each.</summary>
    public static IEnumerable<string> Wrong(Plan plan) => [.. Money(plan), .. Hazards(plan), .. Days(plan), .. Hours(plan)];

    private static IEnumerable<string> Money(Plan plan)
    {
        var added = plan.Costs.Where(c => c.Added).ToList();
        foreach (var line in plan.Costs.Where(c => c.Net.Likely < 0 || c.Gross.Likely < c.Net.Likely || !IsWhole(c.Net.Likely) || !IsWhole(c.Gross.Likely)))
        {
            yield return Invariant($"{line.Cost.Item.Id} is {line.Net.Likely} without VAT and {line.Gross.Likely} with it");
        }

        if (added.Sum(c => c.Gross.Likely) != plan.Money.Base || added.Sum(c => c.Gross.Likely - c.Net.Likely) != plan.Money.BaseVat)
        {
            yield return Invariant($"the lines do not add up to {plan.Money.Base} with VAT of {plan.Money.BaseVat}");
        }

        if (plan.Money.Vat.High > plan.Money.Gross.High)
        {
            yield return "there is more VAT than money";
        }
    }

    private static IEnumerable<string> Hazards(Plan plan) =>
        from hazard in plan.Hazards
        let item = hazard.Hazard.Item
        where hazard.Hazard.IsPresent && item.Before.Severity == 5 && (item.Word < SignalWord.Warning || item.StopWhen.IsEmpty)
        select $"{item.Id} could kill and has no stop trigger or too mild a word";

    private static IEnumerable<string> Days(Plan plan) =>
        from step in plan.Steps
        where step.Dates is { Done: false } dates
            && (dates.EarliestStart < plan.Schedule.Start || dates.EarliestFinish < dates.EarliestStart || dates.LatestFinish < dates.LatestStart || !step.Step.IsPresent)
        select $"{step.Step.Item.Id} runs backwards, begins before today, or has days without being in the plan";

    private static IEnumerable<string> Hours(Plan plan) =>
        from meeting in plan.Schedule.Meetings
        from turn in meeting.Turns
        where turn.Starts < 0 || turn.Ends < turn.Starts
        select $"{meeting.Meeting}: {turn.Step} ends before it begins";

    private static bool IsWhole(decimal sum) => sum * 100 == decimal.Truncate(sum * 100);
}
