using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>The sequence on a calendar: months across, steps in order down, what decides the finish drawn heavier.</summary>
internal static class SequenceCalendar
{
    private const int RowsOnSheet = 22;
    private const decimal RowHeight = 29;
    private const int LettersOfALine = 46;
    private const decimal Head = 26;

    /// <summary>As many drawings as fit a sheet of paper each, then one table of all.</summary>
    internal static ImmutableArray<Block> Of(Bindery bindery)
    {
        var dated = StepBlocks.InOrder(bindery.Plan).Where(s => s.Dates is not null).ToList();
        if (dated.Count == 0)
        {
            return [Make.Say(bindery, "none-here")];
        }

        var sheets = dated.Chunk(RowsOnSheet).ToList();
        return
        [
            .. sheets.Select((rows, i) => Sheet(bindery, rows, i, sheets.Count)),
            .. Make.Grid(bindery, "sequence-caption", ["column-step", "column-who", "column-dates", "column-spare"], dated.Select(s => Row(bindery, s))),
        ];
    }

    private static Block.Drawing Sheet(Bindery bindery, PlannedStep[] rows, int index, int count)
    {
        var axis = new TimeAxis(rows.Min(r => r.Dates!.EarliestStart), rows.Max(r => r.Dates!.LatestFinish));
        var sketch = new Sketch();
        ImmutableArray<decimal> tops = [.. Tops(rows)];
        var bottom = tops[^1];
        axis.Draw(bindery, sketch, Head, bottom);
        foreach (var meeting in bindery.Plan.Schedule.Meetings.Where(m => rows.Any(r => r.Step.Item.Meeting == m.Meeting)))
        {
            sketch.Line(axis.At(meeting.Day), Head, axis.At(meeting.Day), bottom, "dash");
        }

        for (var i = 0; i < rows.Length; i++)
        {
            Bar(bindery, sketch, axis, rows[i], tops[i]);
        }

        var name = count == 1 ? bindery.Say("drawing-calendar") : bindery.Say("drawing-calendar-part", ("0", Figures.Plain(index + 1)), ("1", Figures.Plain(count)));
        var words = bindery.Say("drawing-calendar-words", ("0", bindery.Dates.Short(rows[0].Dates!.EarliestStart)), ("1", bindery.Dates.Short(rows.Max(r => r.Dates!.EarliestFinish))));
        return new(Invariant($"drawing-calendar-{index + 1}"), name, words, sketch.Finish(bottom + 4));
    }

    // Where each row begins, and where the last one ends; a long title takes a line more.
    private static IEnumerable<decimal> Tops(PlannedStep[] rows)
    {
        var top = Head;
        yield return top;
        foreach (var row in rows)
        {
            yield return top += RowHeight + (IsLong(row) ? Sketch.LineHeight : 0);
        }
    }

    private static bool IsLong(PlannedStep step) => step.Step.Item.Title.Words.Length > LettersOfALine;

    private static void Bar(Bindery bindery, Sketch sketch, TimeAxis axis, PlannedStep step, decimal top)
    {
        var dates = step.Dates!;
        var drives = bindery.Plan.Schedule.DrivingSteps.Contains(step.Step.Item.Id);
        var (from, to, late) = (axis.At(dates.EarliestStart), axis.AfterDay(dates.EarliestFinish), axis.AfterDay(dates.LatestFinish));
        sketch.Line(0, top, Sketch.Width, top, "fine");
        if (IsLong(step))
        {
            sketch.Wrap(1, top + 13, LettersOfALine, step.Step.Item.Title.Words, drives ? "heavy small" : "small", Anchoring.Start);
            top += Sketch.LineHeight;
        }
        else
        {
            Title(sketch, step.Step.Item.Title.Words, drives, from, top + 13);
        }

        sketch.Box(from, top + 17, Math.Max(2.5m, to - from), 8, drives || dates.Done ? "solid" : "blank");
        if (late > to && !dates.Done)
        {
            sketch.Line(to, top + 21, late, top + 21).Line(late, top + 18, late, top + 24);
        }
    }

    // A title begins at its bar, or as far left of it as it needs to end inside the drawing.
    private static void Title(Sketch sketch, string title, bool drives, decimal from, decimal y)
    {
        var width = title.Length * (drives ? 7.7m : 6.7m);
        var look = (drives ? "heavy" : "") + (width > Sketch.Width ? " small" : "");
        if (from + width > Sketch.Width)
        {
            sketch.Say(Sketch.Width - 1, y, title, look, Anchoring.End);
            return;
        }

        sketch.Say(from, y, title, look);
    }

    private static GridRow Row(Bindery bindery, PlannedStep step)
    {
        var dates = step.Dates!;
        var spare = dates.Done ? bindery.Say("state-done") : Sides.Spare(bindery, step);
        return Make.Row(null, bindery.Link(step.Step.Item.Id), bindery.Link(step.Step.Item.Party), bindery.Dates.Span(dates.EarliestStart, dates.EarliestFinish), Phrase.Of(spare));
    }
}
