using System.Collections.Concurrent;
using GuideBuilder.Planning.Calendars;

namespace GuideBuilder.Planning.Steps;

/// <summary>On which days each party works for this home. One calendar object a party, so that those who count days may keep tables of them.</summary>
internal sealed class PartyCalendars
{
    private readonly FrozenDictionary<string, WorkingCalendar> _byParty;
    private readonly FrozenDictionary<string, WorkingCalendar> _inMeetings;
    private readonly ConcurrentDictionary<string, WorkingCalendar> _shared = new(StringComparer.Ordinal);

    private PartyCalendars(FrozenDictionary<string, WorkingCalendar> byParty, FrozenDictionary<string, WorkingCalendar> inMeetings) =>
        (_byParty, _inMeetings) = (byParty, inMeetings);

    /// <summary>The calendars of every party that has a working day, for plans that start on a day.</summary>
    public static PartyCalendars Of(ImmutableArray<Party> parties, HolidayList holidays, AnswerSet answers, LocalDate start)
    {
        var reach = PlanReach.Of(start);
        var away = Away(answers, reach);
        var working = parties.Where(p => !p.Works.IsEmpty).Select(p => OfParty(p, holidays, away, reach)).ToArray();
        return new(
            working.ToFrozenDictionary(c => c.Id, StringComparer.Ordinal),
            working.ToFrozenDictionary(c => c.Id, c => InMeetings(c, away, Known.Option(answers, "dates.avoid-fridays") == "yes"), StringComparer.Ordinal));
    }

    /// <summary>Whether the party has a working day at all.</summary>
    public bool Has(string party) => _byParty.ContainsKey(party);

    /// <summary>The days of a party.</summary>
    public WorkingCalendar Of(string party) => _byParty[party];

    /// <summary>The days on which a step may be done: its party's own, in a meeting only those on which somebody is at home, and every day for a wait in calendar days; of these, the days of those whom it asks something of.</summary>
    public WorkingCalendar Of(Step step)
    {
        var own = step.Meeting is not null ? _inMeetings[step.Party] : step.Takes.Unit == DayCount.CalendarDays ? WorkingCalendar.EveryDay : Of(step.Party);
        var others = step.OnDaysOf.Where(Has).ToArray();
        return others.Length == 0 ? own : _shared.GetOrAdd(string.Join(", ", others.Prepend(own.Id)), id => others.Select(Of).Prepend(own).Aggregate(Shared) with { Id = id });
    }

    /// <summary>The first day on which the party of a step can come again after a day that failed: the next one where nothing is known of it.</summary>
    public LocalDate Again(Step step, LocalDate failed) =>
        step.Again is not { } again ? failed.PlusDays(1)
        : again.Unit == DayCount.WorkingDays ? Of(step.Party).Add(failed, StepNetwork.Days(again, t => t.Likely))
        : failed.PlusDays(StepNetwork.Days(again, t => t.Likely));

    /// <summary>The days in which a lag is counted.</summary>
    public WorkingCalendar OfLag(DayCount of, string? whose) => of == DayCount.WorkingDays && whose is not null && Has(whose) ? Of(whose) : WorkingCalendar.EveryDay;

    private static WorkingCalendar OfParty(Party party, HolidayList holidays, LocalDate[] away, DateInterval reach) =>
        WorkingCalendars.Of(party.Id, party.Works, party.KeepsHolidays ? holidays : null, party.Id == Party.Household ? away : [], reach);

    // Only a party with another weekday to offer can spare its Fridays.
    private static WorkingCalendar InMeetings(WorkingCalendar own, LocalDate[] away, bool noFridays)
    {
        var chosen = noFridays && own.Weekdays.Count > 1 ? WorkingCalendars.AvoidingEves(own, IsoDayOfWeek.Friday) : own;
        return chosen with { Id = chosen.Id + ", somebody at home", Closed = chosen.Closed.Concat(away).ToFrozenSet() };
    }

    // What both keep.
    private static WorkingCalendar Shared(WorkingCalendar one, WorkingCalendar other) => new(
        one.Id, one.Weekdays.Intersect(other.Weekdays).ToFrozenSet(), one.Closed.Union(other.Closed).ToFrozenSet(), LocalDate.Min(one.KnownUntil, other.KnownUntil));

    private static LocalDate[] Away(AnswerSet answers, DateInterval reach) =>
        Known.Of(answers, "dates.away") is Value.Days days ? [.. days.Spans.Select(s => s.Intersection(reach)).OfType<DateInterval>().SelectMany(s => s).Distinct().Order()] : [];
}
