using System.Text;
using GuideBuilder.Rendering.Pages;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace GuideBuilder.Rendering.Data;

/// <summary>
/// The days of the plan for a calendar program (RFC 5545): by when the household must act, and the days on which crews meet. All events last all day; hours come from the companies.
/// An event keeps its UID (handbook id and step id), and a later stamp supersedes an earlier one, so that a calendar updates instead of doubling.
/// Nothing stands in it that a health answer or a day away brought into the plan, and no day that may not be fixed yet.
/// </summary>
internal static class CalendarFile
{
    /// <summary>The file's name.</summary>
    internal const string Name = "dates.ics";

    private const string Maker = "-//GuideBuilder//Handbook//EN";
    private const int DaysBeforeDuty = 2;
    private const int DaysBeforeMeeting = 7;

    /// <summary>Whether this book has the file: those who live there and an installer's customer do.</summary>
    internal static bool IsIn(Plan plan) => plan.Occasion.Edition is EditionKind.Householder or EditionKind.Customer && plan.IsCounted;

    /// <summary>The file, or nothing for an edition without dates.</summary>
    internal static ImmutableArray<BoundFile> Of(Bindery bindery) => IsIn(bindery.Plan) ? [new(Name, Encoding.UTF8.GetBytes(Text(bindery)))] : [];

    private static string Text(Bindery bindery)
    {
        var calendar = new Calendar { ProductId = Maker };
        foreach (var calendarEvent in bindery.Plan.Schedule.Meetings.Where(m => !m.IsHeld && !IsOver(bindery, m)).Select(m => Meeting(bindery, m)).Concat(Duties(bindery)))
        {
            calendar.Events.Add(calendarEvent);

            // The serialiser would write SEQUENCE:0 for ever; the stamp alone says which is newer.
            calendarEvent.Properties.Remove("SEQUENCE");
        }

        return new CalendarSerializer(calendar).SerializeToString() ?? throw new UnreachableException();
    }

    private static IEnumerable<CalendarEvent> Duties(Bindery bindery) =>
        from step in Blocks.StepBlocks.InOrder(bindery.Plan)
        where step is { Step.Item: { IsDuty: true, Meeting: null }, Dates.Done: false } && Discretion.OfCalendar.Allows(step.Step.Because)
        select Event(bindery, step.Step.Item.Id, LocalDate.Max(step.Dates!.BookBy, bindery.Plan.Occasion.Today), bindery.Say("ics-duty", ("task", step.Step.Item.Title.Words)), DaysBeforeDuty);

    private static CalendarEvent Meeting(Bindery bindery, MeetingDay meeting)
    {
        var title = bindery.Guidance.Meetings.FirstOrDefault(m => m.Id == meeting.Meeting)?.Title.Words ?? meeting.Meeting;
        var given = meeting.Turns.Any(t => bindery.Items.Step(t.Step)?.Dates?.DateGiven == meeting.Day);
        var planned = Event(bindery, meeting.Meeting, meeting.Day, bindery.Say(given ? "ics-meeting-given" : "ics-meeting-planned", ("meeting", title)), DaysBeforeMeeting);
        if (meeting.Range.Early < meeting.Range.Late)
        {
            planned.Description = bindery.Say("ics-meeting-range", ("early", bindery.Dates.Short(meeting.Range.Early)), ("late", bindery.Dates.Short(meeting.Range.Late)), ("middle", bindery.Dates.Short(meeting.Range.Likely))) + " " + planned.Description;
        }

        planned.Status = given ? EventStatus.Confirmed : EventStatus.Tentative;
        planned.Transparency = given ? TransparencyType.Opaque : TransparencyType.Transparent;
        return planned;
    }

    private static CalendarEvent Event(Bindery bindery, string id, LocalDate day, string summary, int alarmDays)
    {
        var today = bindery.Plan.Occasion.Today;
        var made = new CalendarEvent
        {
            Uid = $"{bindery.Plan.Answers.Handbook.Id}-{id}@guidebuilder.invalid",
            DtStamp = new CalDateTime(today.Year, today.Month, today.Day, 0, 0, 0, "UTC"),
            Start = Day(day),
            End = Day(day.PlusDays(1)),
            Summary = summary,
            Description = bindery.Say("ics-planned"),
            Status = EventStatus.Tentative,
            Transparency = TransparencyType.Transparent,
        };
        made.Alarms.Add(new Alarm { Action = AlarmAction.Display, Description = summary, Trigger = new Trigger(Ical.Net.DataTypes.Duration.FromDays(-alarmDays)) });
        return made;
    }

    private static CalDateTime Day(LocalDate day) => new(day.Year, day.Month, day.Day);

    private static bool IsOver(Bindery bindery, MeetingDay meeting) => meeting.Turns.All(t => bindery.Items.Step(t.Step) is { Dates.Done: true });
}
