using GuideBuilder.Rendering.Pages;

namespace GuideBuilder.Rendering.Drawings;

/// <summary>What has left the account by the end of each month, as steps: in half of the trial runs, and in nine of ten.</summary>
internal static class CashSteps
{
    private const decimal Top = 26;
    private const decimal Height = 150;

    /// <summary>The drawing of the months in order; the table that says the same follows it.</summary>
    internal static Block.Drawing Of(Bindery bindery, ImmutableArray<PaidBy> months)
    {
        var (first, last, whole) = (bindery.Plan.Schedule.Start, months[^1].Day, Math.Max(1, months[^1].High));
        var axis = new TimeAxis(first, last.PlusDays(Math.Max(7, Period.DaysBetween(first, last) / 10)));
        var sketch = new Sketch();
        axis.Draw(bindery, sketch, Top, Top + Height);
        decimal At(decimal sum) => Top + Height - (sum / whole * (Height - 20));
        string Sum(decimal sum) => Figures.Exact(Figures.Near(sum), bindery.Plan.Money.Currency);
        (decimal, decimal)[] Steps(Func<PaidBy, decimal> of)
        {
            var before = months.Select(of).Prepend(0m);
            return [(0m, At(0)), .. months.Zip(before).SelectMany(m => new[] { (axis.At(m.First.Day), At(m.Second)), (axis.At(m.First.Day), At(of(m.First))) }), (Sketch.Width, At(of(months[^1])))];
        }

        sketch.Shape(false, "line", Hatch.None, Steps(m => m.High)).Shape(false, "line", Hatch.None, Steps(m => m.Middle)).Line(0, At(0), Sketch.Width, At(0), "fine");
        sketch.Say(Sketch.Width - 2, At(months[^1].High) - 6, Sum(months[^1].High), "small", Anchoring.End);
        sketch.Say(Sketch.Width - 2, At(months[^1].Middle) + 14, Sum(months[^1].Middle), "small", Anchoring.End);
        return new("drawing-cash", bindery.Say("drawing-cash"), bindery.Say("drawing-cash-words", ("0", Sum(months[^1].Middle)), ("1", Sum(months[^1].High))), sketch.Finish(Top + Height + 6));
    }
}
