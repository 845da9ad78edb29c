using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The day hour by hour: hours down the page like a timetable, a column a crew, the hours without supply shaded.</summary>
internal static class DayTimetable
{
    private const decimal Left = 40;
    // A quarter of an hour, the shortest turn, is as high as the number in it.
    private const decimal HourHeight = 72;

    /// <summary>A drawing and a table for each day on which crews meet, with what to do beside each arrival if that crew does not come.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery) => Each(bindery, (meeting, turns, crews) =>
    [
        new Block.Drawing($"drawing-{meeting.Meeting}", bindery.Say("drawing-day"), bindery.Say("drawing-day-words"), Draw(bindery, meeting, turns, crews)),
        .. Make.Grid(bindery, "day-caption", ["column-hours", "column-who", "column-what", "column-supply", "column-if-not"], [.. Rows(bindery, turns, t => DayBlocks.IfNot(bindery, meeting, turns, t)), .. Open(bindery, meeting).Select(s => Make.Row(null, Phrase.Of(bindery.Say("day-may-apply")), bindery.Link(s.Party), bindery.Link(s.Id), Phrase.Empty, Phrase.Empty))]),
        Make.Say(bindery, "day-off-is-not-dead"),
    ]);

    /// <summary>The table alone, for a sheet that hangs at the door.</summary>
    internal static ImmutableArray<Block> Order(Bindery bindery) => Each(bindery, (meeting, turns, _) =>
    [
        .. Table(bindery, turns),
        .. MayApply(bindery, meeting),
        Make.Say(bindery, "day-off-is-not-dead"),
    ]);

    /// <summary>The turns of each such day alone, for a letter: the hours, who, what, and whether the house has supply.</summary>
    internal static ImmutableArray<Block> Turns(Bindery bindery) => bindery.Plan.Schedule.Meetings.IsEmpty
        ? [Make.Say(bindery, "none-here")]
        : [.. bindery.Plan.Schedule.Meetings.SelectMany(m => Table(bindery, TurnsOf(bindery, m)))];

    private static ImmutableArray<Block> Each(Bindery bindery, Func<MeetingDay, List<MeetingTurn>, List<string>, ImmutableArray<Block>> day) => bindery.Plan.Schedule.Meetings.IsEmpty
        ? [Make.Say(bindery, "none-here")]
        : [.. bindery.Plan.Schedule.Meetings.SelectMany(m => Day(bindery, m, day))];

    private static IEnumerable<Block> Day(Bindery bindery, MeetingDay meeting, Func<MeetingDay, List<MeetingTurn>, List<string>, ImmutableArray<Block>> day)
    {
        var turns = TurnsOf(bindery, meeting);
        var crews = turns.Select(t => CrewOf(bindery, t)).Distinct().ToList();
        return crews.Count == 0 ? [] : [new Block.Prose(meeting.IsHeld ? DayBlocks.Held(bindery, meeting) : DayBlocks.Day(bindery, meeting)), .. day(meeting, turns, crews)];
    }

    private static ImmutableArray<Block> Table(Bindery bindery, List<MeetingTurn> turns) =>
        Make.Grid(bindery, "day-caption", ["column-hours", "column-who", "column-what", "column-supply"], Rows(bindery, turns));

    private static List<MeetingTurn> TurnsOf(Bindery bindery, MeetingDay meeting) => [.. meeting.Turns.Where(t => bindery.Items.Step(t.Step) is not null)];

    private static string CrewOf(Bindery bindery, MeetingTurn turn) => bindery.Items.Step(turn.Step)!.Step.Item.Party;

    private static Picture Draw(Bindery bindery, MeetingDay meeting, List<MeetingTurn> turns, List<string> crews)
    {
        var sketch = new Sketch();
        var dark = 3 + ((crews.Count + 1) * 17m);
        var top = dark + 59;
        var last = Math.Ceiling(turns.Max(t => t.Ends));
        var column = (Sketch.Width - Left) / crews.Count;
        sketch.Say(0, 14, bindery.Say("drawing-day-hours"));
        for (var i = 0; i < crews.Count; i++)
        {
            sketch.Say(0, 31 + (i * 17m), $"{Letter(i)}   {bindery.Items.Find(crews[i])?.Title.Words}");
            sketch.Say(Left + (column * (i + 0.5m)), top - 6, Letter(i), "heavy", Anchoring.Middle);
        }

        Dark(bindery, sketch, turns, top, dark);
        Hours(bindery, sketch, top, last);
        for (var i = 0; i <= crews.Count; i++)
        {
            sketch.Line(Left + (i * column), top, Left + (i * column), top + (last * HourHeight), "fine");
        }

        for (var i = 0; i < turns.Count; i++)
        {
            var crew = crews.IndexOf(CrewOf(bindery, turns[i]));
            var (x, from) = (Left + (crew * column), top + (turns[i].Starts * HourHeight));
            sketch.Box(x + 6, from, column - 12, Math.Max(16, (turns[i].Ends - turns[i].Starts) * HourHeight), "blank").Say(x + (column / 2), from + 13, Invariant($"{i + 1}"), "heavy", Anchoring.Middle);
            if (turns.FindIndex(t => CrewOf(bindery, t) == crews[crew]) == i && DayBlocks.NextDayWithout(meeting, turns[i], crews[crew]) is { } next)
            {
                Absent(sketch, column, crew, crews.Count, from, bindery.Say("drawing-day-if-not", ("crew", Letter(crew)), ("date", bindery.Dates.Tight(next))));
            }
        }

        return sketch.Finish(top + (last * HourHeight) + 16);
    }

    // Beside an arrival, on the side where more columns are free.
    private static void Absent(Sketch sketch, decimal column, int crew, int crews, decimal from, string words)
    {
        var right = crews - crew - 1 > crew;
        var room = (right ? crews - crew - 1 : crew) * column;
        if (room > 0)
        {
            sketch.Wrap(right ? Left + ((crew + 1) * column) + 3 : Left + (crew * column) - 3, from + 12, (int)(room / 5.9m), words, "small", right ? Anchoring.Start : Anchoring.End);
        }
    }

    private static string Letter(int index) => ((char)('A' + index)).ToString();

    // Without supply, and within that what is live although the house is dark.
    private static void Dark(Bindery bindery, Sketch sketch, List<MeetingTurn> turns, decimal top, decimal key)
    {
        Shade(turns.Where(t => t.SupplyOff).ToList(), Hatch.None, key, "drawing-dark");
        Shade([.. turns.Where((_, i) => SupplyWords.IsLive(bindery, turns, i))], Hatch.Dotted, key + 18, "drawing-live");

        void Shade(List<MeetingTurn> some, Hatch hatch, decimal y, string words)
        {
            if (some.Count > 0)
            {
                Fill(Left, top + (some.Min(t => t.Starts) * HourHeight), Sketch.Width - Left, (some.Max(t => t.Ends) - some.Min(t => t.Starts)) * HourHeight, hatch);
                Fill(0, y, 24, 14, hatch);
                sketch.Say(30, y + 11, bindery.Say(words));
            }
        }

        void Fill(decimal x, decimal y, decimal width, decimal height, Hatch hatch)
        {
            sketch.Box(x, y, width, height, "pale");
            sketch.Box(x, y, width, height, "edge", hatch);
        }
    }

    private static void Hours(Bindery bindery, Sketch sketch, decimal top, decimal last)
    {
        for (var hour = 0m; hour <= last; hour++)
        {
            var y = top + (hour * HourHeight);
            sketch.Line(Left - 6, y, Sketch.Width, y, "fine").Say(Left - 9, y + 4, bindery.Say("clock-hours", ("h", Figures.Plain(hour))), "small", Anchoring.End);
        }
    }

    private static IEnumerable<GridRow> Rows(Bindery bindery, List<MeetingTurn> turns, params Func<MeetingTurn, Phrase>[] more) => turns.Select((turn, i) => Make.Row(
        null,
        [
            Phrase.Of(bindery.Say("day-turn", ("n", Invariant($"{i + 1}")), ("from", Clock(bindery, turn.Starts)), ("to", Clock(bindery, turn.Ends)))),
            bindery.Link(CrewOf(bindery, turn)),
            bindery.Link(turn.Step),
            Phrase.Of(SupplyWords.Of(bindery, turns, i)),
            .. more.Select(m => m(turn)),
        ]));

    // In a line, because the sheet must stay one side.
    private static ImmutableArray<Block> MayApply(Bindery bindery, MeetingDay meeting)
    {
        var steps = Open(bindery, meeting).Select(s => bindery.Link(s.Id)).ToList();
        return steps.Count == 0 ? [] : [new Block.Prose(bindery.Labels.Compose("day-may-apply-steps", ("steps", Phrase.Join("; ", steps))))];
    }

    // Steps of the day that wait for an answer have no turn yet; those before what is done have been done or were not needed.
    private static IEnumerable<Step> Open(Bindery bindery, MeetingDay meeting)
    {
        var ofTheDay = bindery.Plan.Steps.Where(s => s.Step.Item.Meeting == meeting.Meeting).ToList();
        var done = ofTheDay.Where(s => s.Dates is { Done: true }).Select(s => s.Step.Item.Order).DefaultIfEmpty(int.MinValue).Max();
        return ofTheDay.Where(s => s.Step.State == ItemState.Open && s.Step.Item.Order > done && meeting.Turns.All(t => t.Step != s.Step.Item.Id))
            .Select(s => s.Step.Item)
            .OrderBy(s => s.Order);
    }

    // Minutes within the hour, as crews are told.
    private static string Clock(Bindery bindery, decimal hours)
    {
        var (whole, minutes) = (decimal.Truncate(hours), decimal.Round((hours - decimal.Truncate(hours)) * 60, 0, MidpointRounding.AwayFromZero));
        return (whole, minutes) switch
        {
            (0, 0) => "0",
            (0, _) => bindery.Say("clock-minutes", ("m", Figures.Plain(minutes))),
            (_, 0) => bindery.Say("clock-hours", ("h", Figures.Plain(whole))),
            _ => bindery.Say("clock-both", ("h", Figures.Plain(whole)), ("m", Figures.Plain(minutes))),
        };
    }
}
