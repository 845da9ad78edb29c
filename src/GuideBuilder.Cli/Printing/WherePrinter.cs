using Spectre.Console;

namespace GuideBuilder.Cli.Printing;

/// <summary>Where the household is, on the console: what is late, what is next and by when, what stands open before a payment, which clocks run, and what decides the date.</summary>
internal static class WherePrinter
{
    /// <summary>The lines, plain in a pipe.</summary>
    internal static IEnumerable<string> Lines(Plan plan)
    {
        var where = plan.Whereabouts;
        return
        [
            Invariant($"Done: {where.Done} of {where.Dated} steps{(where.LastDone is { } last ? $", last {last}" : "")}"),
            .. where.DarkSince is { } since ? [$"Without supply since {ValueText.Of(since)}"] : Array.Empty<string>(),
            .. where.Late.Select(l => Invariant($"Late: {l.Step}, {Words(l.Because)} {ValueText.Of(l.Since)}, {l.Days} days")),
            .. where.Conflicts.Select(c => $"Cannot be kept: {c.Step} on {ValueText.Of(c.Given)}{(c.Earliest is { } day ? $", at the earliest {ValueText.Of(day)}" : "")}. It follows from {string.Join(", ", c.Chain)}"),
            .. where.Clocks.Select(Clock),
            .. where.Next.Select(n => $"Next: {n.Step}, by {ValueText.Of(n.By)}"),
            .. where.Gates.Where(g => g.State != GateState.Done).Select(g => $"Before {g.Payment}: {g.Step}, {Words(g.State)}{(g.Expected is { } day ? $", expected {ValueText.Of(day)}" : "")}"),
            .. plan.Schedule.Meetings.Where(m => m.IsHeld).Select(m => $"Not to be fixed yet: {m.Meeting}, until {string.Join(", ", m.HeldFor)}"),
            .. plan.Schedule.Meetings.SelectMany(m => m.DropOuts.Select(d => DropOut(m, d))),
            .. Prospect(plan),
        ];
    }

    /// <summary>Prints them.</summary>
    internal static void Print(IAnsiConsole console, Plan plan)
    {
        foreach (var line in Lines(plan))
        {
            console.Write(new Paragraph(line + Environment.NewLine));
        }
    }

    private static string DropOut(MeetingDay meeting, DropOut dropOut)
    {
        var others = dropOut.CallOff.Select(c => $"{c.Party} by {ValueText.Of(c.FreeUntil)}{(c.Costs.IsEmpty ? "" : $", or pay {string.Join(", ", c.Costs)}")}");
        return $"If {dropOut.Party} drops out of {meeting.Meeting}: call off {(dropOut.CallOff.IsEmpty ? "nobody" : string.Join("; ", others))}. Next possible day {ValueText.Of(dropOut.NextDay)}";
    }

    private static IEnumerable<string> Prospect(Plan plan)
    {
        var schedule = plan.Schedule;
        foreach (var limit in schedule.Limits)
        {
            yield return Invariant($"Cannot be kept: at most {limit.Most} days between {limit.Step} and {limit.Other}, {limit.Least} at the least. It follows from {string.Join(", ", limit.Chain)}{(limit.Change is { } one ? Invariant($". The smallest change that would do: {one.Of} {one.Step} {one.Days} days") : "")}");
        }

        if (!schedule.Stuck.IsEmpty)
        {
            yield return $"No day within three years is left for {string.Join(", ", schedule.Stuck)}";
        }

        if (schedule.LastSafe is { } safe)
        {
            yield return $"Last safe day for {safe.Step}: {ValueText.Of(safe.Day)}";
        }

        if (schedule.Feasibility is Feasibility.OnlyIfQuick or Feasibility.NotPossible)
        {
            yield return $"What decides the date: {string.Join(", ", schedule.DrivingSteps)}";
        }

        if (schedule.Change is { } change)
        {
            yield return Invariant($"The smallest change that would do: {change.Of} {change.Step} {change.Days} days");
        }
    }

    private static string Clock(RunningClock clock) => Invariant(
        $"Clock: {clock.Clock.Id}, from {ValueText.Of(clock.DayZero)}, due {ValueText.Of(clock.Due)}, {clock.DaysLate} days late{(clock.Ended is { } end ? $", ended {ValueText.Of(end)}" : "")}{(clock.Owed is { } owed ? $", the text as at {ValueText.Of(clock.Clock.Sum!.AsAt)} gives {owed}" : "")}");

    private static string Words(LateBecause because) => because switch
    {
        LateBecause.DatePassed => "its date has passed:",
        LateBecause.LastDayPassed => "it had to begin by",
        LateBecause.QuotationEnded => "the quotation ended on",
        LateBecause.Missed => "nobody came on",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Words(GateState state) => state switch
    {
        GateState.Done => "done",
        GateState.NotYet => "not yet",
        GateState.MayApply => "may apply",
        GateState.LeftOpen => "left open when paid",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
