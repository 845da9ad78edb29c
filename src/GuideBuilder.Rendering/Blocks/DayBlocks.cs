using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Blocks;

/// <summary>The days on which crews meet: whether they may be fixed, the eve, and what to do when something goes wrong.</summary>
internal static class DayBlocks
{
    /// <summary>What a meeting waits for before its day may be fixed.</summary>
    internal static Phrase Held(Bindery bindery, MeetingDay meeting) => bindery.Labels.Compose(
        "day-held",
        ("meeting", Phrase.Of(Title(bindery, meeting))),
        ("waits", Phrase.Join("; ", meeting.HeldFor.Select(h => bindery.Guidance.Questions.FirstOrDefault(q => q.Name == h) is { } question ? bindery.Link(question) : bindery.Link(h)))));

    /// <summary>The day of the base plan, and how far it may move.</summary>
    internal static Phrase Day(Bindery bindery, MeetingDay meeting) => meeting.Range.Early == meeting.Range.Late
        ? bindery.Labels.Compose("day-date-sure", ("0", bindery.Dates.Say(meeting.Day)))
        : bindery.Labels.Compose("day-date", ("0", bindery.Dates.Say(meeting.Day)), ("1", bindery.Dates.Range(meeting.Range)), ("2", bindery.Dates.SayShort(meeting.Range.Likely)));

    /// <summary>On the eve: each crew with the last day to call it off, and for each that drops out whom to call off, by when, and the next day.</summary>
    internal static ImmutableArray<Block> Eve(Bindery bindery)
    {
        var meetings = bindery.Plan.Schedule.Meetings.Where(m => !m.Eve.IsEmpty).ToList();
        return meetings.Count == 0 ? [Make.Say(bindery, "none-here")] : [.. meetings.SelectMany(m => Eve(bindery, m))];
    }

    /// <summary>What can go wrong on the day, what to do, who pays and the next possible day; then what each step says of itself.</summary>
    internal static ImmutableArray<Block> IfTheyDoNotCome(Bindery bindery) =>
    [
        .. bindery.Plan.Schedule.Meetings.SelectMany(m => m.Mishaps).Select(m => Mishap(bindery, m)),
        .. StepBlocks.InOrder(bindery.Plan)
            .Where(s => s.Step.Item is { Meeting: not null, IfItGoesWrong.IsEmpty: false } && IsInTimetable(bindery, s.Step.Item.Id))
            .Select(s => new Block.Entry(null, 1, bindery.Link(s.Step.Item.Id), bindery.Read(s.Step.Item.IfItGoesWrong), [Sides.Who(bindery, s.Step.Item.Party)])),
    ];

    /// <summary>Beside the arrival of a crew: what to read if it does not come, and the next day; nothing in its later turns.</summary>
    internal static Phrase IfNot(Bindery bindery, MeetingDay meeting, List<MeetingTurn> turns, MeetingTurn turn)
    {
        var party = bindery.Items.Step(turn.Step)!.Step.Item.Party;
        return turns.First(t => bindery.Items.Step(t.Step)!.Step.Item.Party == party) != turn || MishapOf(meeting, turn) is not { } planned
            ? Phrase.Empty
            : bindery.Labels.Compose("day-if-not", ("mishap", Bindery.Link(planned.Mishap.Id, bindery.Words(planned.Mishap.Title))), ("date", bindery.Dates.SayShort(planned.NextDay)));
    }

    /// <summary>The next day on which all could come if a crew does not arrive for its first turn; null where none is known.</summary>
    internal static LocalDate? NextDayWithout(MeetingDay meeting, MeetingTurn turn, string crew) =>
        MishapOf(meeting, turn)?.NextDay ?? meeting.DropOuts.FirstOrDefault(d => d.Party == crew)?.NextDay;

    // Mishaps stand in the order in which they come to mind; the first of a turn is that nobody comes.
    private static PlannedMishap? MishapOf(MeetingDay meeting, MeetingTurn turn) => meeting.Mishaps.FirstOrDefault(m => m.Mishap.Turns.Contains(turn.Step));

    /// <summary>Whether a step has its turn in the timetable of a day; variants of a turn that only may apply have none.</summary>
    internal static bool IsInTimetable(Bindery bindery, string step) => bindery.Plan.Schedule.Meetings.Any(m => m.Turns.Any(t => t.Step == step));

    private static IEnumerable<Block> Eve(Bindery bindery, MeetingDay meeting) => meeting.IsHeld ? [new Block.Prose(bindery.Labels.Compose("eve-held", ("meeting", Phrase.Of(Title(bindery, meeting)))))] :
    [
        new Block.Prose(bindery.Labels.Compose("eve-lead", ("meeting", Phrase.Of(Title(bindery, meeting))), ("date", bindery.Dates.Say(meeting.Eve.Min(e => e.FreeUntil))))),
        .. Make.Grid(bindery, "eve-caption", ["column-drops-out", "column-call-off", "column-next-day"], meeting.DropOuts.Select(d => Row(bindery, d))),
    ];

    private static GridRow Row(Bindery bindery, DropOut dropOut) => Make.Row(
        null,
        bindery.Link(dropOut.Party),
        dropOut.CallOff.IsEmpty ? Phrase.Of(bindery.Say("eve-nobody")) : Phrase.Join("; ", dropOut.CallOff.Select(c => CallOff(bindery, c))),
        bindery.Dates.SayShort(dropOut.NextDay));

    private static Phrase CallOff(Bindery bindery, EveCall call)
    {
        var costs = call.Costs.Select(id => (Id: id, Cost: bindery.Items.Cost(id))).Where(c => c.Cost is not null);
        var price = Phrase.Join(", ", costs.Select(c => bindery.Link(c.Id) + Phrase.Of(" " + bindery.Money(c.Cost!.Gross))));
        return bindery.Labels.Compose(
            price.IsEmpty ? "eve-call-off" : "eve-call-off-cost", ("party", bindery.Link(call.Party)), ("date", bindery.Dates.SayShort(call.FreeUntil)), ("costs", price));
    }

    private static Block.Entry Mishap(Bindery bindery, PlannedMishap planned) => new(
        planned.Mishap.Id,
        1,
        bindery.Words(planned.Mishap.Title),
        [.. bindery.Read(planned.Mishap.WhatToDo), .. Make.Under(bindery, "mishap-who-pays", planned.Mishap.WhoPays, 2)],
        [Sides.Line(bindery, "left-next-day", bindery.Dates.Say(planned.NextDay))]);

    /// <summary>The days on which crews meet, a line each, and only the weeks where a day may not be fixed yet; that none is fixed where none is.</summary>
    internal static ImmutableArray<Block> Days(Bindery bindery)
    {
        var days = bindery.Plan.Schedule.Meetings.Select(m => m.IsHeld ? Weeks(bindery, m) : bindery.Labels.Compose("works-day-on", ("meeting", Phrase.Of(Title(bindery, m))), ("date", bindery.Dates.Range(m.Range)))).ToList();
        return days.Count == 0 ? [Make.Say(bindery, "works-day-open")] : Make.List(days);
    }

    private static Phrase Weeks(Bindery bindery, MeetingDay meeting) => bindery.Labels.Compose(
        "works-day-weeks", ("meeting", Phrase.Of(Title(bindery, meeting))), ("from", bindery.Dates.SayShort(Monday(meeting.Range.Early))), ("to", bindery.Dates.SayShort(Monday(meeting.Range.Late))));

    private static LocalDate Monday(LocalDate day) => day.PlusDays(1).Previous(IsoDayOfWeek.Monday);

    private static string Title(Bindery bindery, MeetingDay meeting) => bindery.Guidance.Meetings.FirstOrDefault(m => m.Id == meeting.Meeting)?.Title.Words ?? meeting.Meeting;
}
