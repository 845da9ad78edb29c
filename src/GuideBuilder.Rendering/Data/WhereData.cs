using System.Text.Json;

namespace GuideBuilder.Rendering.Data;

/// <summary>Writes where the household is, what leads to the wished day, and the days on which crews meet, for the file of the plan.</summary>
internal static class WhereData
{
    /// <summary>Three members of the plan: where, prospect and meetings.</summary>
    internal static void Write(Utf8JsonWriter json, Plan plan)
    {
        Where(json, plan.Whereabouts);
        Prospect(json, plan.Schedule);
        List(json, "meetings", plan.Schedule.Meetings, m => Meeting(json, m));
    }

    private static void Where(Utf8JsonWriter json, Whereabouts where)
    {
        json.WriteStartObject("where");
        json.WriteNumber("done", where.Done);
        json.WriteNumber("dated", where.Dated);
        Id(json, "last-done", where.LastDone);
        Day(json, "without-supply-since", where.DarkSince);
        List(json, "late", where.Late, l => Late(json, l));
        List(json, "next", where.Next, n => Dated(json, n.Step, n.By));
        List(json, "gates", where.Gates, g => Gate(json, g));
        List(json, "payments", where.Payments, p => Ahead(json, p));
        List(json, "clocks", where.Clocks, c => Clock(json, c));
        List(json, "conflicts", where.Conflicts, c => Conflict(json, c));
        json.WriteEndObject();
    }

    private static void Late(Utf8JsonWriter json, LateItem late)
    {
        json.WriteString("step", late.Step);
        json.WriteString("because", Word(late.Because.ToString()));
        Day(json, "since", late.Since);
        json.WriteNumber("days", late.Days);
    }

    private static void Gate(Utf8JsonWriter json, Gate gate)
    {
        json.WriteString("payment", gate.Payment);
        json.WriteString("step", gate.Step);
        json.WriteString("state", Word(gate.State.ToString()));
        Day(json, "expected", gate.Expected);
    }

    private static void Ahead(Utf8JsonWriter json, GatedPayment payment)
    {
        json.WriteString("step", payment.Step);
        PlanData.Points(json, "gross", payment.Sum);
    }

    private static void Clock(Utf8JsonWriter json, RunningClock clock)
    {
        json.WriteString("clock", clock.Clock.Id);
        json.WriteString("party", clock.Clock.Party);
        Day(json, "started", clock.Started.On);
        Day(json, "day-zero", clock.DayZero);
        Day(json, "due", clock.Due);
        json.WriteNumber("days-late", clock.DaysLate);
        Day(json, "ended", clock.Ended);
        if (clock is { Owed: { } owed, Clock.Sum: { } sum })
        {
            json.WriteStartObject("owed");
            json.WriteNumber("amount", owed.Amount);
            json.WriteString("currency", owed.Unit.Symbol);
            Day(json, "as-at", sum.AsAt);
            json.WriteEndObject();
        }
    }

    private static void Conflict(Utf8JsonWriter json, DateConflict conflict)
    {
        json.WriteString("step", conflict.Step);
        Day(json, "given", conflict.Given);
        Day(json, "earliest", conflict.Earliest);
        Ids(json, "chain", conflict.Chain);
    }

    private static void Prospect(Utf8JsonWriter json, Schedule schedule)
    {
        json.WriteStartObject("prospect");
        Day(json, "needed-by", schedule.NeededBy);
        if (schedule.ReadyOn is { } ready)
        {
            json.WriteString("needed-for", Word(schedule.NeededFor.ToString()));
            Day(json, "ready-on", ready);
        }

        json.WriteString("feasibility", Word(schedule.Feasibility.ToString()));
        if (schedule.LastSafe is { } safe)
        {
            json.WriteStartObject("last-safe");
            Dated(json, safe.Step, safe.Day);
            json.WriteEndObject();
        }

        Ids(json, "driving-steps", schedule.DrivingSteps);
        Change(json, schedule.Change);
        List(json, "limits", schedule.Limits, l => Limit(json, l));
        Ids(json, "no-day-left", schedule.Stuck);
        json.WriteEndObject();
    }

    private static void Change(Utf8JsonWriter json, SmallestChange? smallest)
    {
        if (smallest is { } change)
        {
            json.WriteStartObject("change");
            json.WriteString("of", Word(change.Of.ToString()));
            Id(json, "step", change.Step);
            Id(json, "other", change.Other);
            json.WriteNumber("days", change.Days);
            json.WriteEndObject();
        }
    }

    private static void Limit(Utf8JsonWriter json, LimitConflict limit)
    {
        json.WriteString("step", limit.Step);
        json.WriteString("other", limit.Other);
        json.WriteNumber("most", limit.Most);
        json.WriteNumber("least", limit.Least);
        json.WriteString("of", Word(limit.Of.ToString()));
        Ids(json, "chain", limit.Chain);
        Change(json, limit.Change);
    }

    private static void Meeting(Utf8JsonWriter json, MeetingDay meeting)
    {
        json.WriteString("meeting", meeting.Meeting);
        Day(json, "day", meeting.Day);
        Ids(json, "held-for", meeting.HeldFor);
        List(json, "turns", meeting.Turns, t => Turn(json, t));
        List(json, "eve", meeting.Eve, e => Eve(json, e));
        List(json, "drop-outs", meeting.DropOuts, d => DropOut(json, d));
        List(json, "mishaps", meeting.Mishaps, m => Mishap(json, m));
    }

    private static void Turn(Utf8JsonWriter json, MeetingTurn turn)
    {
        json.WriteString("step", turn.Step);
        json.WriteNumber("starts", turn.Starts);
        json.WriteNumber("ends", turn.Ends);
        json.WriteBoolean("supply-off", turn.SupplyOff);
    }

    private static void Eve(Utf8JsonWriter json, EveCall call)
    {
        json.WriteString("party", call.Party);
        Day(json, "free-until", call.FreeUntil);
        Ids(json, "costs", call.Costs);
    }

    private static void DropOut(Utf8JsonWriter json, DropOut dropOut)
    {
        json.WriteString("party", dropOut.Party);
        List(json, "call-off", dropOut.CallOff, c => Eve(json, c));
        Day(json, "next-day", dropOut.NextDay);
    }

    private static void Mishap(Utf8JsonWriter json, PlannedMishap planned)
    {
        json.WriteString("mishap", planned.Mishap.Id);
        Day(json, "next-day", planned.NextDay);
    }

    private static void Dated(Utf8JsonWriter json, string step, LocalDate by)
    {
        json.WriteString("step", step);
        Day(json, "by", by);
    }

    /// <summary>A list of objects.</summary>
    internal static void List<T>(Utf8JsonWriter json, string name, ImmutableArray<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Ids(Utf8JsonWriter json, string name, ImmutableArray<string> ids)
    {
        json.WriteStartArray(name);
        foreach (var id in ids)
        {
            json.WriteStringValue(id);
        }

        json.WriteEndArray();
    }

    private static void Id(Utf8JsonWriter json, string name, string? id)
    {
        if (id is not null)
        {
            json.WriteString(name, id);
        }
    }

    /// <summary>A day, left out where there is none.</summary>
    internal static void Day(Utf8JsonWriter json, string name, LocalDate? day)
    {
        if (day is { } known)
        {
            json.WriteString(name, NodaTime.Text.LocalDatePattern.Iso.Format(known));
        }
    }

    /// <summary>A name of ours as data writes it: MetIfLikely is met-if-likely.</summary>
    internal static string Word(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
}
