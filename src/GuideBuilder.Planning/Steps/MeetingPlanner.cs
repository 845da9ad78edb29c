using GuideBuilder.Planning.Ways;

namespace GuideBuilder.Planning.Steps;

/// <summary>What is known of a meeting besides its day: what holds it back, the eve, and what can go wrong.</summary>
internal static class MeetingPlanner
{
    /// <summary>The schedule with all that is known of its meetings.</summary>
    public static Schedule Plan(Schedule schedule, WayPlan plan, PartyCalendars calendars) => schedule with
    {
        Meetings = [.. schedule.Meetings.Select(m => plan.Case.Guidance.Meetings.FirstOrDefault(g => g.Id == m.Meeting) is { } known ? Of(m, known, plan, calendars) : m)],
    };

    private static MeetingDay Of(MeetingDay day, Meeting known, WayPlan plan, PartyCalendars calendars)
    {
        var ahead = day.Turns.Select(t => plan.Steps.First(s => s.Step.Item.Id == t.Step)).Where(s => s.Dates is { Done: false }).Select(s => s.Step.Item).ToArray();
        LocalDate Next(IEnumerable<Step> lost) => NextDay(day.Day, lost, ahead, calendars);
        var eve = ahead.Select(s => s.Party).Distinct(StringComparer.Ordinal).Select(p => EveOf(p, day.Day, known, plan, calendars)).OfType<EveCall>().ToImmutableArray();
        return day with
        {
            HeldFor = ahead.Length == 0 ? [] : HeldFor(known.Hold, plan),
            Eve = eve,
            DropOuts = [.. eve.Select(c => new DropOut(c.Party, [.. eve.Where(o => o.Party != c.Party)], Next(eve.Select(o => ahead.First(s => s.Party == o.Party)))))],
            Mishaps = [.. known.Mishaps.Select(m => (Mishap: m, Turn: ahead.FirstOrDefault(s => m.Turns.Contains(s.Id)))).Where(m => m.Turn is not null).Select(m => new PlannedMishap(m.Mishap, Next([m.Turn!])))],
        };
    }

    // What nobody has said counts as what would hold the day back.
    private static ImmutableArray<string> HeldFor(MeetingHold? hold, WayPlan plan) => hold is null || Judge.Of(hold.If, plan.Case.Lookup).Truth == Truth.Fails
        ? []
        :
        [
            .. hold.Done.Where(id => plan.Steps.Any(s => s.Step.Item.Id == id && s.Step.IsPresent && s.Dates is not { Done: true })),
            .. hold.Answered.Where(q => Known.Of(plan.Case.Facts.Answers, q) is null),
        ];

    private static EveCall? EveOf(string party, LocalDate day, Meeting known, WayPlan plan, PartyCalendars calendars)
    {
        var crew = known.Crews.FirstOrDefault(c => c.Party == party);
        return crew is null ? null : new(
            party,
            calendars.Of(party).Add(day, -(Outranked.Days(plan.Case.Facts.Answers, crew.Or) ?? crew.FreeUntil)),
            [.. crew.Costs.Where(id => plan.Costs.Any(c => c.Cost.Item.Id == id && c.Cost.IsPresent))]);
    }

    // The earliest day on which the crews that were lost, called off ones too, can come again, and all others with them.
    private static LocalDate NextDay(LocalDate day, IEnumerable<Step> lost, Step[] ahead, PartyCalendars calendars)
    {
        var shared = ahead.Select(calendars.Of).ToArray();
        var (next, last) = (lost.Select(s => calendars.Again(s, day)).Append(day.PlusDays(1)).Max(), day.PlusYears(PlanReach.Years));
        while (next < last && !shared.All(c => c.IsOpen(next)))
        {
            next = next.PlusDays(1);
        }

        return next;
    }
}
