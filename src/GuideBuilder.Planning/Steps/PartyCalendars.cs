namespace GuideBuilder.Planning.Steps;

/// <summary>On which days each party works for this home. One calendar object a party, so that those who count days may keep tables of them.</summary>
internal sealed class PartyCalendars
{
    private readonly FrozenDictionary<string, WorkingCalendar> _byParty;
    private readonly FrozenDictionary<string, WorkingCalendar> _inMeetings;

    private PartyCalendars(FrozenDictionary<string, WorkingCalendar> byParty, FrozenDictionary<string, WorkingCalendar> inMeetings) =>
        (_byParty, _inMeetings) = (byParty, inMeetings);

    /// <summary>The calendars of every party that has a working day.</summary>
    public static PartyCalendars Of(ImmutableArray<Party> parties, HolidayList holidays, AnswerSet answers)
    {
        var away = Away(answers);
        var working = parties.Where(p => !p.Works.IsEmpty).Select(p => OfParty(p, holidays, away)).ToArray();
        var shunned = AvoidsFridays(answers) ? holidays.Days.Select(h => h.Date.PlusDays(-1)).ToArray() : [];
        return new(
            working.ToFrozenDictionary(c => c.Id, StringComparer.Ordinal),
            working.ToFrozenDictionary(c => c.Id, c => InMeetings(c, away, shunned, AvoidsFridays(answers)), StringComparer.Ordinal));
    }

    /// <summary>Whether the party has a working day at all.</summary>
    public bool Has(string party) => _byParty.ContainsKey(party);

    /// <summary>The days of a party.</summary>
    public WorkingCalendar Of(string party) => _byParty[party];

    /// <summary>The days on which a step may be done: its party's own, in a meeting only those on which somebody is at home, and every day for a wait in calendar days.</summary>
    public WorkingCalendar Of(Step step) =>
        step.Meeting is not null ? _inMeetings[step.Party] : step.Takes.Unit == DayCount.CalendarDays ? WorkingCalendar.EveryDay : Of(step.Party);

    /// <summary>The days in which a lag is counted.</summary>
    public WorkingCalendar OfLag(DayCount of, string? whose) => of == DayCount.WorkingDays && whose is not null && Has(whose) ? Of(whose) : WorkingCalendar.EveryDay;

    private static WorkingCalendar OfParty(Party party, HolidayList holidays, LocalDate[] away) => party.Id == Party.Household
        ? new(party.Id, WorkingCalendar.EveryDay.Weekdays, away.ToFrozenSet(), LocalDate.MaxIsoValue)
        : new(party.Id, party.Works.ToFrozenSet(), party.KeepsHolidays ? holidays.Days.Select(h => h.Date).ToFrozenSet() : [], party.KeepsHolidays ? holidays.KnownUntil : LocalDate.MaxIsoValue);

    private static WorkingCalendar InMeetings(WorkingCalendar own, LocalDate[] away, LocalDate[] shunned, bool noFridays) => own with
    {
        Id = own.Id + ", somebody at home",
        Weekdays = noFridays && own.Weekdays.Count > 1 ? own.Weekdays.Where(d => d != IsoDayOfWeek.Friday).ToFrozenSet() : own.Weekdays,
        Closed = own.Closed.Concat(away).Concat(shunned).ToFrozenSet(),
    };

    private static LocalDate[] Away(AnswerSet answers) =>
        Known.Of(answers, "dates.away") is Value.Days days ? [.. days.Spans.SelectMany(s => s).Distinct().Order()] : [];

    private static bool AvoidsFridays(AnswerSet answers) => Known.Option(answers, "dates.avoid-fridays") == "yes";
}
