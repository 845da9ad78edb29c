using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The day hour by hour: hours down the page like a timetable, a column a crew, the hours without supply shaded.</summary>
internal static class DayTimetable
{
    private const decimal Left = 30;
    // A quarter of an hour, the shortest turn, is as high as the number in it.
    private const decimal HourHeight = 72;

    /// <summary>A drawing and a table for each day on which crews meet.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery) => bindery.Plan.Schedule.Meetings.IsEmpty
        ? [Make.Say(bindery, "none-here")]
        : [.. bindery.Plan.Schedule.Meetings.SelectMany(m => Day(bindery, m))];

    /// <summary>The turns of each such day alone, for a letter: the hours, who, what, and whether the house has supply.</summary>
    internal static ImmutableArray<Block> Turns(Bindery bindery) => bindery.Plan.Schedule.Meetings.IsEmpty
        ? [Make.Say(bindery, "none-here")]
        : [.. bindery.Plan.Schedule.Meetings.SelectMany(m => Table(bindery, TurnsOf(bindery, m)))];

    private static List<MeetingTurn> TurnsOf(Bindery bindery, MeetingDay meeting) => [.. meeting.Turns.Where(t => bindery.Items.Step(t.Step) is not null)];

    private static ImmutableArray<Block> Table(Bindery bindery, List<MeetingTurn> turns) =>
        Make.Grid(bindery, "day-caption", ["column-hours", "column-who", "column-what", "column-supply"], turns.Select((t, i) => Row(bindery, t, i + 1)));

    private static IEnumerable<Block> Day(Bindery bindery, MeetingDay meeting)
    {
        var turns = TurnsOf(bindery, meeting);
        var crews = turns.Select(t => CrewOf(bindery, t)).Distinct().ToList();
        if (crews.Count == 0)
        {
            return [];
        }

        return
        [
            new Block.Prose(meeting.IsHeld ? DayBlocks.Held(bindery, meeting) : DayBlocks.Day(bindery, meeting)),
            new Block.Drawing($"drawing-{meeting.Meeting}", bindery.Say("drawing-day"), bindery.Say("drawing-day-words"), Draw(bindery, turns, crews)),
            .. Table(bindery, turns),
        ];
    }

    private static string CrewOf(Bindery bindery, MeetingTurn turn) => bindery.Items.Step(turn.Step)!.Step.Item.Party;

    private static Picture Draw(Bindery bindery, List<MeetingTurn> turns, List<string> crews)
    {
        var sketch = new Sketch();
        var key = 8 + ((crews.Count + 1) * 17m);
        var top = key + 22;
        var last = Math.Ceiling(turns.Max(t => t.Ends));
        var column = (Sketch.Width - Left) / crews.Count;
        for (var i = 0; i < crews.Count; i++)
        {
            sketch.Say(0, 14 + (i * 17m), $"{Letter(i)}   {bindery.Items.Find(crews[i])?.Title.Words}");
            sketch.Say(Left + (column * (i + 0.5m)), top - 6, Letter(i), "heavy", Anchoring.Middle);
        }

        Dark(bindery, sketch, turns, top, 3 + (crews.Count * 17m));
        Hours(sketch, top, last);
        for (var i = 0; i <= crews.Count; i++)
        {
            sketch.Line(Left + (i * column), top, Left + (i * column), top + (last * HourHeight), "fine");
        }

        for (var i = 0; i < turns.Count; i++)
        {
            var x = Left + (crews.IndexOf(CrewOf(bindery, turns[i])) * column);
            var (from, height) = (top + (turns[i].Starts * HourHeight), Math.Max(16, (turns[i].Ends - turns[i].Starts) * HourHeight));
            sketch.Box(x + 6, from, column - 12, height, "blank").Say(x + (column / 2), from + 13, Invariant($"{i + 1}"), "heavy", Anchoring.Middle);
        }

        return sketch.Finish(top + (last * HourHeight) + 16);
    }

    private static string Letter(int index) => ((char)('A' + index)).ToString();

    private static void Dark(Bindery bindery, Sketch sketch, List<MeetingTurn> turns, decimal top, decimal key)
    {
        var off = turns.Where(t => t.SupplyOff).ToList();
        if (off.Count == 0)
        {
            return;
        }

        var (from, to) = (off.Min(t => t.Starts), off.Max(t => t.Ends));
        sketch.Box(Left, top + (from * HourHeight), Sketch.Width - Left, (to - from) * HourHeight, "pale").Box(Left, top + (from * HourHeight), Sketch.Width - Left, (to - from) * HourHeight, "edge");
        sketch.Box(0, key, 24, 14, "pale").Box(0, key, 24, 14, "edge").Say(Left, key + 11, bindery.Say("drawing-dark"));
    }

    private static void Hours(Sketch sketch, decimal top, decimal last)
    {
        for (var hour = 0m; hour <= last; hour++)
        {
            var y = top + (hour * HourHeight);
            sketch.Line(Left - 6, y, Sketch.Width, y, "fine").Say(Left - 10, y + 4, Figures.Plain(hour), "small", Anchoring.End);
        }
    }

    private static GridRow Row(Bindery bindery, MeetingTurn turn, int number) => Make.Row(
        null,
        Phrase.Of(Invariant($"{number}: ") + bindery.Say("from-to", ("0", Figures.Hours(turn.Starts)), ("1", Figures.Hours(turn.Ends)))),
        bindery.Link(CrewOf(bindery, turn)),
        bindery.Link(turn.Step),
        Phrase.Of(bindery.Say(turn.SupplyOff ? "supply-off" : "supply-on")));
}
